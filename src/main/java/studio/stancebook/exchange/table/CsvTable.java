package studio.stancebook.exchange.table;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/** A table in a text file (RFC 4180, with the delimiter found by {@link Delimiter} and any line end). */
final class CsvTable implements Table {

    /** Room for the longest cell allowed; a line without end stops here. */
    private static final int BUFFER = 4 * (TableLimits.MOST_CHARACTERS_IN_CELL + 1);

    private final CsvCells handler = new CsvCells();
    private final CloseableIterator<List<Cell>> records;
    private final DoubleSupplier share;
    private final List<String> headings;

    /**
     * @param text the text, closed with this table
     * @param share how much of the file behind {@code text} was read, from 0 to 1
     */
    CsvTable(Reader text, char delimiter, DoubleSupplier share) {
        this.share = share;
        CsvReader<List<Cell>> reader = CsvReader.builder()
                .fieldSeparator(delimiter)
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(BUFFER)
                .build(handler, text);
        records = reader.iterator();
        headings = readHeadings();
    }

    private List<String> readHeadings() {
        List<Cell> first = nextRecord();
        if (first == null || first.stream().allMatch(Cell::blank)) {
            throw new UnreadableTable("Row 1 is empty; it must hold the headings of the columns.");
        }
        return first.stream().map(Cell::stripped).toList();
    }

    @Override
    public List<String> headings() {
        return headings;
    }

    @Override
    public @Nullable TableRow next() {
        for (List<Cell> cells = nextRecord(); cells != null; cells = nextRecord()) {
            TableRow row = new TableRow(handler.row(), cells, fault(cells));
            if (!row.blank()) {
                return row;
            }
        }
        return null;
    }

    /** A row of another width than the heading has slipped somewhere; empty cells too many are harmless. */
    private @Nullable String fault(List<Cell> cells) {
        boolean tooMany = cells.size() > headings.size()
                && cells.subList(headings.size(), cells.size()).stream().anyMatch(cell -> !cell.blank());
        return tooMany || cells.size() < headings.size()
                ? "The row has " + cells.size() + " cells, the heading " + headings.size()
                        + ": a delimiter or a quotation mark is missing or too many."
                : null;
    }

    private @Nullable List<Cell> nextRecord() {
        try {
            return records.hasNext() ? records.next() : null;
        } catch (NoSuchElementException end) {
            return null;
        } catch (CsvParseException broken) {
            throw refusal(broken);
        } catch (UncheckedIOException unreadable) {
            throw refusal(unreadable);
        }
    }

    private RuntimeException refusal(RuntimeException broken) {
        for (Throwable cause = broken; cause != null; cause = cause.getCause()) {
            if (cause instanceof TableTooLarge refused) {
                return refused;
            }
            if (cause instanceof CharacterCodingException) {
                return new UnreadableTable(
                        "Row " + (handler.row() + 1)
                                + " or one soon after it holds bytes that are no letters of the file's encoding; save it as UTF-8.");
            }
            if (cause instanceof IOException && !(broken instanceof CsvParseException)) {
                return broken;
            }
        }
        String message = String.valueOf(broken.getMessage());
        return message.contains("buffer")
                ? TableLimits.cellTooLong(handler.row())
                : new UnreadableTable("Row " + handler.row()
                        + " is broken: a quotation mark is open at the end, or letters follow a closing one.");
    }

    @Override
    public double share() {
        return share.getAsDouble();
    }

    @Override
    public void close() throws IOException {
        records.close();
    }
}
