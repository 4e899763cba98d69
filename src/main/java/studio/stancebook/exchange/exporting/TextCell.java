package studio.stancebook.exchange.exporting;

import studio.stancebook.exchange.table.TableLimits;

/** Keeps text to what a cell can hold, the apostrophe before it included. */
final class TextCell {

    private static final int MOST = TableLimits.MOST_CHARACTERS_IN_CELL - 1;

    private TextCell() {}

    /** The text, or as many of its whole lines as fit. */
    static String cut(String text) {
        if (text.length() <= MOST) {
            return text;
        }
        int end = text.lastIndexOf('\n', MOST);
        return text.substring(0, end < 0 ? MOST : end);
    }
}
