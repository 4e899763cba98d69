package studio.stancebook.exchange.mapping;

import java.util.Locale;

/** What a problem does to its row. */
public enum Severity {
    /** The row stays out. */
    ERROR,
    /** The row comes in, and the problem with it as an open query. */
    QUERY;

    /** The name in JSON. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
