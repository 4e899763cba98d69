package studio.stancebook.exchange.table;

import org.jspecify.annotations.Nullable;

/** Columns as letters: A is 0, Z is 25, AA is 26. */
public final class CellReference {

    /** The last column that a workbook can have, XFD. */
    private static final int MOST = 16_384;

    private CellReference() {}

    /** The letters of a column, counted from 0. */
    public static String letters(int column) {
        String letters = "";
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
            letters = (char) ('A' + (rest - 1) % 26) + letters;
        }
        return letters;
    }

    /**
     * The column of a reference such as {@code AB12}.
     *
     * @param next the column that comes next, taken when there is no reference; a reference may not lie before it
     * @throws UnreadableTable if the reference is none or goes backwards
     */
    static int column(@Nullable String reference, int next) {
        if (reference == null) {
            return next;
        }
        int column = 0;
        for (int i = 0; i < reference.length() && column <= MOST; i++) {
            char c = reference.charAt(i);
            if (c < 'A' || c > 'Z') {
                break;
            }
            column = 26 * column + c - 'A' + 1;
        }
        if (column - 1 < next || column > MOST) {
            throw new UnreadableTable("The sheet's cells are out of order at \"" + TextLimit.shown(reference) + "\".");
        }
        return column - 1;
    }
}
