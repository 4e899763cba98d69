package studio.stancebook.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;

/** A table on one sheet of a workbook. */
final class XlsxTable implements Table {

    private static final long MOST_BYTES = 1L << 30;

    private final WorkbookParts parts;
    private final String part;
    private final SharedStrings strings;
    private final XmlGuard bytes;
    private final SheetRows rows;
    private final List<String> headings;

    private XlsxTable(WorkbookParts parts, String part, SharedStrings strings, XmlGuard bytes)
            throws XMLStreamException {
        this.parts = parts;
        this.part = part;
        this.strings = strings;
        this.bytes = bytes;
        rows = new SheetRows(WorkbookXml.open(bytes), strings);
        headings = readHeadings();
    }

    /**
     * @param sheet the name of the sheet; null for the first
     * @throws UnreadableTable if there is no such sheet
     */
    static XlsxTable open(Path file, @Nullable String sheet, ReadingTime time) throws IOException {
        WorkbookParts parts = WorkbookParts.open(file, time);
        SharedStrings strings = null;
        try {
            WorkbookDirectory directory = WorkbookDirectory.of(parts);
            String part = partOf(directory, sheet);
            Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent());
            strings = SharedStrings.unpack(parts, directory.sharedStrings(), folder);
            return open(parts, part, strings);
        } catch (RuntimeException | IOException failed) {
            if (strings != null) {
                strings.close();
            }
            parts.close();
            throw failed;
        }
    }

    private static XlsxTable open(WorkbookParts parts, String part, SharedStrings strings) throws IOException {
        XmlGuard bytes = parts.open(part, MOST_BYTES);
        if (bytes == null) {
            throw new UnreadableTable("The workbook names the sheet " + part + ", but does not hold it.");
        }
        try {
            return new XlsxTable(parts, part, strings, bytes);
        } catch (XMLStreamException | RuntimeException broken) {
            bytes.close();
            throw WorkbookXml.refusal(part, broken);
        }
    }

    private static String partOf(WorkbookDirectory directory, @Nullable String sheet) {
        String name = sheet == null ? directory.names().get(0) : sheet;
        String part = directory.sheets().get(name);
        if (part == null) {
            throw new UnreadableTable("The workbook has no sheet \"" + TextLimit.shown(name) + "\", but "
                    + TextLimit.shown(String.join(", ", directory.names())) + ".");
        }
        return part;
    }

    private List<String> readHeadings() {
        TableRow first = read();
        if (first == null || first.blank()) {
            throw new UnreadableTable("Row 1 of the sheet is empty; it must hold the headings of the columns.");
        }
        return first.cells().stream().map(Cell::stripped).toList();
    }

    private @Nullable TableRow read() {
        try {
            return rows.next();
        } catch (XMLStreamException | RuntimeException broken) {
            throw WorkbookXml.refusal(part, broken);
        }
    }

    @Override
    public List<String> headings() {
        return headings;
    }

    @Override
    public @Nullable TableRow next() {
        TableRow row = read();
        while (row != null && row.blank()) {
            row = read();
        }
        return row == null ? null : checked(row);
    }

    private TableRow checked(TableRow row) {
        boolean beyond = row.cells().size() > headings.size()
                && row.cells().subList(headings.size(), row.cells().size()).stream()
                        .anyMatch(cell -> !cell.blank());
        return beyond
                ? new TableRow(
                        row.number(),
                        row.cells(),
                        "The row has cells beyond column " + CellReference.letters(headings.size() - 1)
                                + ", the last with a heading.")
                : row;
    }

    @Override
    public double share() {
        return Math.min(1, bytes.bytesRead() / (double) parts.sizeOf(part));
    }

    @Override
    public void close() throws IOException {
        bytes.close();
        strings.close();
        parts.close();
    }
}
