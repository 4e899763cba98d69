package studio.stancebook.exchange.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file on disk that was found to be a table; opened as often as needed.
 *
 * @param path where it is
 * @param kind CSV or workbook
 * @param sheets the names of a workbook's sheets; empty for CSV
 */
public record TableFile(Path path, TableKind kind, List<String> sheets) {

    public TableFile {
        sheets = List.copyOf(sheets);
    }

    /**
     * Looks at a file's content.
     *
     * @throws NotATable if it is neither CSV nor a workbook (JSON is no table either)
     * @throws UnreadableTable if it is broken
     */
    public static TableFile of(Path path) throws IOException {
        TableKind kind = TableKind.of(path);
        return switch (kind) {
            case CSV -> new TableFile(path, kind, List.of());
            case XLSX -> new TableFile(path, kind, sheetsOf(path));
            case JSON -> throw new NotATable("This is JSON, which has no columns.");
        };
    }

    private static List<String> sheetsOf(Path path) throws IOException {
        try (WorkbookParts parts = WorkbookParts.open(path, new ReadingTime())) {
            return WorkbookDirectory.of(parts).names();
        }
    }

    /**
     * Opens the table, its heading read.
     *
     * @param sheet which sheet of a workbook; null for the first
     */
    public Table open(@Nullable String sheet) throws IOException {
        ReadingTime time = new ReadingTime();
        Table table = kind == TableKind.XLSX ? XlsxTable.open(path, sheet, time) : openCsv(time);
        time.pause();
        return new TimedTable(table, time);
    }

    private Table openCsv(ReadingTime time) throws IOException {
        TextEncoding encoding = encoding();
        CountedInput bytes = new CountedInput(Files.newInputStream(path), time);
        try {
            Reader text = new BufferedReader(encoding.reader(bytes), Delimiter.SAMPLE);
            double size = Math.max(1, Files.size(path));
            return new CsvTable(text, delimiter(text), () -> Math.min(1, bytes.count() / size));
        } catch (RuntimeException | IOException failed) {
            bytes.close();
            throw failed;
        }
    }

    private TextEncoding encoding() throws IOException {
        try (InputStream bytes = Files.newInputStream(path)) {
            return TextEncoding.of(bytes);
        }
    }

    private static char delimiter(Reader text) throws IOException {
        char[] sample = new char[Delimiter.SAMPLE];
        text.mark(Delimiter.SAMPLE);
        int length = 0;
        try {
            for (int n = 0; n >= 0 && length < sample.length; n = text.read(sample, length, sample.length - length)) {
                length += n;
            }
        } catch (CharacterCodingException broken) {
            throw new UnreadableTable("The file holds bytes that are no letters of its encoding; save it as UTF-8.");
        }
        text.reset();
        return Delimiter.of(new String(sample, 0, length));
    }
}
