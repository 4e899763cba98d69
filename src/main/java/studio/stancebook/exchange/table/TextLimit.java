package studio.stancebook.exchange.table;

import org.jspecify.annotations.Nullable;

/** Text of a file as it may be repeated in a message: on one line and short, whatever was sent. */
public final class TextLimit {

    private static final int MOST = 60;

    private TextLimit() {}

    /** The first 60 characters, control characters as spaces, three dots for the rest. */
    public static String shown(@Nullable String text) {
        if (text == null) {
            return "";
        }
        int end = Math.min(text.length(), MOST);
        String start = text.substring(0, end).replaceAll("\\p{Cntrl}", " ");
        return end < text.length() ? start + "..." : start;
    }
}
