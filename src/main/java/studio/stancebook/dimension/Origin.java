package studio.stancebook.dimension;

import java.util.Locale;
import java.util.Optional;

/**
 * Where a value comes from, with the standard uncertainty that is assumed when none is given. The defaults are studio
 * decision 0005: a vehicle measured on a surface plate, a value scaled off a drawing, a figure printed in a
 * specification sheet, and one computed from others.
 */
public enum Origin {
    MEASURED("measured", 2, 0.2),
    DRAWING("from a drawing", 5, 0.5),
    SPECIFICATION("published specification", 3, 0.5),
    DERIVED("derived", 5, 0.5);

    private final String label;
    private final double uncertaintyMm;
    private final double uncertaintyDeg;

    Origin(String label, double uncertaintyMm, double uncertaintyDeg) {
        this.label = label;
        this.uncertaintyMm = uncertaintyMm;
        this.uncertaintyDeg = uncertaintyDeg;
    }

    /** The origin of a JSON name, in any case. */
    public static Optional<Origin> ofKey(String key) {
        for (Origin origin : values()) {
            if (origin.key().equalsIgnoreCase(key.strip())) {
                return Optional.of(origin);
            }
        }
        return Optional.empty();
    }

    /** The name in JSON, such as {@code specification}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** In words. */
    public String label() {
        return label;
    }

    /** The default standard uncertainty in {@code unit}; 0 for counts, 1 % is not assumed for masses but 10 kg. */
    public double defaultUncertainty(Unit unit) {
        return switch (unit) {
            case MM -> uncertaintyMm;
            case DEG -> uncertaintyDeg;
            case KG -> 10;
            case COUNT -> 0;
        };
    }
}
