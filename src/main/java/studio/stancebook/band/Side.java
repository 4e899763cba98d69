package studio.stancebook.band;

import java.util.Locale;

/** The two sides of a band. */
public enum Side {
    LOW,
    HIGH;

    /** The name in JSON. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
