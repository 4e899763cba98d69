package studio.stancebook.exchange.table;

/**
 * One cell.
 *
 * @param text as written; a number of a workbook in plain digits with a decimal point
 * @param kind what the file says it is
 */
public record Cell(String text, CellKind kind) {

    /** Nothing there. */
    public static final Cell EMPTY = new Cell("", CellKind.TEXT);

    /** What a file says about a cell; a CSV file only ever says text. */
    public enum CellKind {
        TEXT,
        /** A number without doubt about its decimal mark. */
        NUMBER,
        /** The stored result of a formula. */
        FORMULA,
        /** A formula whose result is not stored. */
        UNCOMPUTED,
        /** An error value such as {@code #DIV/0!}. */
        ERROR
    }

    /** A cell of text. */
    public static Cell ofText(String text) {
        return text.isEmpty() ? EMPTY : new Cell(text, CellKind.TEXT);
    }

    /** True when there is nothing to read; a formula without a result is not blank. */
    public boolean blank() {
        return text.isBlank() && kind != CellKind.UNCOMPUTED;
    }

    /** The text without surrounding space. */
    public String stripped() {
        return text.strip();
    }
}
