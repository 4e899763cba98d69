package studio.stancebook.exchange.exporting;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.exchange.table.OwnFolder;
import studio.stancebook.exchange.table.TableLimits;

/**
 * A table on its way out: every package with every column there can be, kept in a file until it is known which columns
 * hold anything. So an answer begins only when nothing can fail any more, and slow readers hold no connection to the
 * database.
 */
final class TableSpool implements Closeable {

    private static final int BUFFER = 1 << 18;

    private final Path file;
    private final CsvWriter writer;
    private final List<ExportColumn> columns = ExportColumns.all();
    private final BitSet used = new BitSet();
    private int rows;
    private boolean writing = true;

    TableSpool(OwnFolder folder) throws IOException {
        file = folder.newFile("spool", ".tmp");
        writer = CsvWriter.builder().build(file);
        for (int i = 0; i < columns.size(); i++) {
            used.set(i, columns.get(i).always());
        }
    }

    void add(PackageView view) {
        List<String> cells = new ArrayList<>(columns.size());
        for (int i = 0; i < columns.size(); i++) {
            String cell = TextCell.cut(columns.get(i).cell().apply(view));
            cells.add(cell);
            if (!cell.isEmpty()) {
                used.set(i);
            }
        }
        writer.writeRecord(cells);
        rows++;
    }

    int rows() {
        return rows;
    }

    /** The columns that hold anything, and those that are there always. */
    List<ExportColumn> usedColumns() {
        return used.stream().mapToObj(columns::get).toList();
    }

    /** Takes the cells of the used columns, row by row. */
    interface RowSink {
        void accept(List<String> cells) throws IOException;
    }

    /** Hands out all rows; nothing can be added any more. */
    void forEach(RowSink sink) throws IOException {
        endWriting();
        CsvRecordHandler handler =
                CsvRecordHandler.of(builder -> builder.maxFieldSize(TableLimits.MOST_CHARACTERS_IN_CELL)
                        .maxRecordSize(4 * TableLimits.MOST_CHARACTERS_IN_ROW));
        try (CsvReader<CsvRecord> reader =
                CsvReader.builder().maxBufferSize(BUFFER).build(handler, file)) {
            for (CsvRecord record : reader) {
                sink.accept(used.stream().mapToObj(record::getField).toList());
            }
        }
    }

    private void endWriting() throws IOException {
        if (writing) {
            writing = false;
            writer.close();
        }
    }

    @Override
    public void close() throws IOException {
        endWriting();
        Files.deleteIfExists(file);
    }
}
