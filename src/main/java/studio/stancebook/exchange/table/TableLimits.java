package studio.stancebook.exchange.table;

/** How large a table may be. The limits keep memory bounded whatever is sent; studio decision 0020. */
public final class TableLimits {

    /** Rows below the heading. */
    public static final int MOST_ROWS = 1_000_000;
    /** Columns that hold anything. */
    public static final int MOST_COLUMNS = 500;
    /** Characters in a cell: what a cell of a workbook can hold. */
    public static final int MOST_CHARACTERS_IN_CELL = 32_767;
    /** Characters in a row. */
    public static final int MOST_CHARACTERS_IN_ROW = 1_000_000;

    private TableLimits() {}

    static TableTooLarge tooManyRows() {
        return new TableTooLarge("The table has more than " + MOST_ROWS + " rows; bring it in in parts.");
    }

    static TableTooLarge tooManyColumns(long row) {
        return new TableTooLarge("Row " + row + " has more than " + MOST_COLUMNS + " cells; a table may have up to "
                + MOST_COLUMNS + " columns.");
    }

    static TableTooLarge cellTooLong(long row) {
        return new TableTooLarge("A cell in row " + row + " is longer than " + MOST_CHARACTERS_IN_CELL
                + " characters; a quotation mark that is not closed is a usual cause.");
    }

    static TableTooLarge rowTooLong(long row) {
        return new TableTooLarge("Row " + row + " is longer than " + MOST_CHARACTERS_IN_ROW + " characters.");
    }
}
