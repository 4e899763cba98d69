package studio.stancebook.exchange.exporting;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import studio.stancebook.problem.CellGuard;
import studio.stancebook.problem.Impossible;

/** Writes a table as a workbook with one sheet, some rows in memory at a time. */
final class XlsxExport {

    private static final int ROWS_IN_MEMORY = 100;
    private static final int MOST_ROWS = 1_048_575;

    private XlsxExport() {}

    static void write(TableSpool spool, Path to) throws IOException {
        if (spool.rows() > MOST_ROWS) {
            throw new Impossible("A workbook holds " + MOST_ROWS + " rows, and these are " + spool.rows()
                    + ": take them out as CSV or JSON.");
        }
        try (SXSSFWorkbook workbook = new SXSSFWorkbook(ROWS_IN_MEMORY);
                OutputStream out = Files.newOutputStream(to)) {
            workbook.setCompressTempFiles(true);
            List<ExportColumn> columns = spool.usedColumns();
            Sheet sheet = workbook.createSheet("Packages");
            heading(workbook, sheet, columns);
            spool.forEach(cells -> fill(sheet.createRow(sheet.getLastRowNum() + 1), columns, cells));
            workbook.write(out);
        }
    }

    private static void heading(SXSSFWorkbook workbook, Sheet sheet, List<ExportColumn> columns) {
        Font bold = workbook.createFont();
        bold.setBold(true);
        CellStyle style = workbook.createCellStyle();
        style.setFont(bold);
        Row row = sheet.createRow(0);
        for (int i = 0; i < columns.size(); i++) {
            row.createCell(i).setCellValue(columns.get(i).heading());
            row.getCell(i).setCellStyle(style);
        }
        sheet.createFreezePane(1, 1);
    }

    private static void fill(Row row, List<ExportColumn> columns, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            if (columns.get(i).number() && !cell.isEmpty()) {
                row.createCell(i).setCellValue(Double.parseDouble(cell));
            } else if (!cell.isEmpty()) {
                row.createCell(i).setCellValue(CellGuard.guarded(cell));
            }
        }
    }
}
