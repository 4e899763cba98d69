package studio.stancebook.exchange.table;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Files for tests, made on the spot, and what comes out of reading them. */
final class TableFiles {

    private TableFiles() {}

    static Path text(Path folder, String text, Charset charset) throws IOException {
        return bytes(folder, text.getBytes(charset));
    }

    static Path text(Path folder, String text) throws IOException {
        return text(folder, text, StandardCharsets.UTF_8);
    }

    static Path bytes(Path folder, byte[] bytes) throws IOException {
        return Files.write(Files.createTempFile(folder, "table", ".bin"), bytes);
    }

    /** A workbook with one sheet; cells are texts, numbers, booleans or null. */
    static Path workbook(Path folder, Object[]... rows) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            Sheet sheet = workbook.createSheet("Cars");
            for (int r = 0; r < rows.length; r++) {
                fill(sheet.createRow(r), rows[r]);
            }
            return save(folder, workbook);
        }
    }

    static Path save(Path folder, XSSFWorkbook workbook) throws IOException {
        Path file = Files.createTempFile(folder, "workbook", ".xlsx");
        try (OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        }
        return file;
    }

    static void fill(Row row, Object... values) {
        for (int c = 0; c < values.length; c++) {
            if (values[c] instanceof Number number) {
                row.createCell(c).setCellValue(number.doubleValue());
            } else if (values[c] instanceof Boolean truth) {
                row.createCell(c).setCellValue(truth);
            } else if (values[c] != null) {
                row.createCell(c).setCellValue(values[c].toString());
            }
        }
    }

    /** An archive of parts, for workbooks that no program would write. */
    static Path zip(Path folder, Map<String, byte[]> parts) throws IOException {
        Path file = Files.createTempFile(folder, "parts", ".xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }

    /** The parts of the smallest workbook, with this as the XML of its sheet. */
    static Map<String, byte[]> parts(String sheet) {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        put(parts, "[Content_Types].xml", "<Types/>");
        put(
                parts,
                "_rels/.rels",
                "<Relationships><Relationship Id=\"r1\" Type=\"http://x/officeDocument\" Target=\"xl/workbook.xml\"/>"
                        + "</Relationships>");
        put(
                parts,
                "xl/workbook.xml",
                "<workbook xmlns:r=\"http://x/r\"><sheets><sheet name=\"S\" sheetId=\"1\" r:id=\"r1\"/></sheets>"
                        + "</workbook>");
        put(
                parts,
                "xl/_rels/workbook.xml.rels",
                "<Relationships><Relationship Id=\"r1\" Type=\"http://x/worksheet\" Target=\"worksheets/s.xml\"/>"
                        + "</Relationships>");
        put(parts, "xl/worksheets/s.xml", sheet);
        return parts;
    }

    static void put(Map<String, byte[]> parts, String name, String text) {
        parts.put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** All rows below the heading as lists of texts. */
    static List<List<String>> read(Path file) throws IOException {
        List<List<String>> all = new ArrayList<>();
        for (TableRow row : rows(file)) {
            all.add(row.cells().stream().map(Cell::text).toList());
        }
        return all;
    }

    static List<TableRow> rows(Path file) throws IOException {
        List<TableRow> rows = new ArrayList<>();
        try (Table table = TableFile.of(file).open(null)) {
            for (TableRow row = table.next(); row != null; row = table.next()) {
                rows.add(row);
            }
        }
        return rows;
    }

    static List<String> headings(Path file) throws IOException {
        try (Table table = TableFile.of(file).open(null)) {
            return table.headings();
        }
    }
}
