package studio.stancebook.problem;

import java.util.regex.Pattern;

/**
 * An apostrophe before text that a spreadsheet would take for a formula: at the beginning of a cell, and behind every
 * character that begins a cell where the file is opened with other separators than it was written with. Taking a table out
 * puts it there and bringing one in takes it away, so that a name such as {@code =1+1} comes back as it was. Text that has an
 * apostrophe in such a place gets another one, so that nothing is lost.
 *
 * <p>Which beginnings a spreadsheet acts on: = + - @ and their full-width forms, tab and line break (OWASP, "CSV Injection";
 * from memory).
 */
public final class CellGuard {

    private static final String SIGNS = "=+\\-@\uFF1D\uFF0B\uFF0D\uFF20";
    private static final String SEPARATORS = ";\t\r\n";

    private static final String AT_START = "(?=['" + SIGNS + "\t\r\n])";
    private static final String BEHIND = "(?<=[" + SEPARATORS + "])";
    private static final String NEXT = "(?=['\"" + SIGNS + "])";
    private static final Pattern ACTED_ON = Pattern.compile("\\A" + AT_START + "|" + BEHIND + NEXT);
    private static final Pattern GUARDED = Pattern.compile("\\A'" + AT_START + "|" + BEHIND + "'" + NEXT);

    private CellGuard() {}

    /** The text of a cell that no spreadsheet acts on. */
    public static String guarded(String text) {
        return ACTED_ON.matcher(text).replaceAll("'");
    }

    /** The text behind {@link #guarded}; other text as it is. */
    public static String unguarded(String cell) {
        return GUARDED.matcher(cell).replaceAll("");
    }
}
