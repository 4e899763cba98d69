package studio.stancebook.exchange.importing;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import studio.stancebook.exchange.mapping.RowProblem;
import studio.stancebook.exchange.mapping.RowReading;
import studio.stancebook.exchange.table.TableRow;
import studio.stancebook.problem.CellGuard;

/**
 * The rows of a table that were refused, as a CSV table to mend: the reasons in a column of their own, then the cells as they
 * were. It comes in again as it is, since nobody takes the heading of the reasons for a value.
 */
final class RefusedRows implements Closeable {

    /** The heading of the reasons. */
    static final String HEADING = "Refused because";

    /** As long as a file that is taken in may be; later rows are left out. */
    static final long MOST_CHARACTERS = 30L << 20;

    private static final int MOST_REASON = 1000;
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:[.,]\\d+)?");

    private final CsvWriter csv;
    private final List<Integer> columns;
    private final long room;
    private long written;
    private int rows;

    /** @param headings of the table; a column of earlier reasons is left out */
    RefusedRows(Path file, List<String> headings) throws IOException {
        this(file, headings, MOST_CHARACTERS);
    }

    RefusedRows(Path file, List<String> headings, long room) throws IOException {
        this.room = room;
        columns = IntStream.range(0, headings.size())
                .filter(i -> !headings.get(i).strip().equalsIgnoreCase(HEADING))
                .boxed()
                .toList();
        csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(file, StandardCharsets.UTF_8);
        List<String> cells = new ArrayList<>(List.of(HEADING));
        columns.forEach(column -> cells.add(cell(headings.get(column))));
        csv.writeRecord(cells);
    }

    /** Takes a row that was refused. */
    void add(RowReading reading) {
        TableRow source = reading.source();
        if (source == null || written > room) {
            return;
        }
        List<String> cells = new ArrayList<>(List.of(cell(reasons(reading))));
        columns.forEach(column -> cells.add(cell(source.cell(column).text())));
        written += cells.stream().mapToLong(String::length).sum();
        if (written <= room) {
            csv.writeRecord(cells);
            rows++;
        }
    }

    private static String reasons(RowReading reading) {
        String all = reading.problems().found().stream()
                .filter(RowProblem::error)
                .map(RowProblem::question)
                .collect(Collectors.joining(" "));
        return all.length() <= MOST_REASON ? all : all.substring(0, MOST_REASON) + "...";
    }

    /** A number as it is; text that a spreadsheet would take for a formula with its apostrophe, once. */
    private static String cell(String text) {
        return NUMBER.matcher(text).matches() ? text : CellGuard.guarded(CellGuard.unguarded(text));
    }

    /** How many rows the table has below its heading. */
    int rows() {
        return rows;
    }

    @Override
    public void close() {
        try {
            csv.close();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
