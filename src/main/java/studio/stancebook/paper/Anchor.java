package studio.stancebook.paper;

import java.util.Locale;

/** Which part of a line of text lies at its place. */
public enum Anchor {
    START,
    MIDDLE,
    END;

    /** As SVG says it. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @param key {@code start}, {@code middle} or {@code end} */
    public static Anchor ofKey(String key) {
        return valueOf(key.toUpperCase(Locale.ROOT));
    }
}
