package studio.stancebook.dimension;

import java.util.Locale;

/** Whether the lengths of a set are millimetres, or units of a sketch that carries no dimension. */
public enum Scale {
    MILLIMETRES,
    /** Only dimensionless measures and angles exist. */
    UNSCALED;

    /** The name in JSON. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
