package studio.stancebook.exchange.mapping;

/**
 * A leading apostrophe before text that a spreadsheet would take for a formula. Taking a table out puts it there and
 * bringing one in takes it away, so that a name such as {@code =1+1} comes back as it was. Text that begins with an
 * apostrophe before such text gets another one, so that nothing is lost.
 *
 * <p>Which beginnings a spreadsheet acts on: = + - @, tab and line break (OWASP, "CSV Injection"; from memory).
 */
public final class CellGuard {

    private static final String ACTED_ON = "=+-@\t\r\n";

    private CellGuard() {}

    /** The text of a cell that no spreadsheet acts on. */
    public static String guarded(String text) {
        return text.isEmpty() || "'".concat(ACTED_ON).indexOf(text.charAt(0)) < 0 ? text : "'" + text;
    }

    /** The text behind {@link #guarded}; other text as it is. */
    public static String unguarded(String cell) {
        boolean isGuarded = cell.length() > 1
                && cell.charAt(0) == '\''
                && "'".concat(ACTED_ON).indexOf(cell.charAt(1)) >= 0;
        return isGuarded ? cell.substring(1) : cell;
    }
}
