package studio.stancebook.drawing.sideview;

import java.util.Arrays;
import java.util.Optional;
import studio.stancebook.quantity.Interval;

/**
 * What a band allows, as a part of the picture of a class.
 *
 * @param limits in tyre diameters; an infinite end leaves that side open
 */
public record ClassZone(Kind kind, Interval limits) {

    /** The measures whose bands can be seen in a side view. */
    public enum Kind {
        HEIGHT("height-in-wheels"),
        SCREEN_AIM("screen-aim-in-wheels"),
        ROCKER("rocker-offset-in-wheels"),
        FRONT_OVERHANG("front-overhang-in-wheels"),
        REAR_OVERHANG("rear-overhang-in-wheels");

        private final String measure;

        Kind(String measure) {
            this.measure = measure;
        }

        /** The key of the measure. */
        public String measure() {
            return measure;
        }

        public static Optional<Kind> of(String measure) {
            return Arrays.stream(values())
                    .filter(kind -> kind.measure.equals(measure))
                    .findFirst();
        }
    }
}
