package studio.stancebook.underlay;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.Interval;

/**
 * A measure as the sheet has it.
 *
 * @param measure its key
 * @param name of the measure
 * @param decimals that are shown
 * @param degrees true for an angle, false for tyre diameters
 * @param value drawn
 * @param basis what the value is
 * @param band that is in force, closed, an infinite end leaves that side open; null where there is none
 * @param bandVersion null where there is no band
 */
public record Proportion(
        String measure,
        String name,
        int decimals,
        boolean degrees,
        double value,
        Basis basis,
        @Nullable Interval band,
        @Nullable Integer bandVersion) {

    /** What the value of a proportion is. */
    public enum Basis {
        /** The median of the class, or the edge of the band that is nearest to it. */
        MEDIAN,
        /** The point of the band that was asked for. */
        POINT,
        /** The middle, or the one edge, of a band without a class. */
        BAND,
        /** The proposal's own. */
        PROPOSAL,
        /** From the tyre and the wheelbase that were both given. */
        GIVEN;

        /** The name in JSON, such as {@code median}. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    Proportion given(double newValue) {
        return new Proportion(measure, name, decimals, degrees, newValue, Basis.GIVEN, band, bandVersion);
    }
}
