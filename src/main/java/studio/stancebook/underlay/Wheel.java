package studio.stancebook.underlay;

import org.jspecify.annotations.Nullable;

/**
 * A wheel of the sheet, mm.
 *
 * @param x of its centre
 * @param centreHeight above the ground
 * @param radius of the tyre
 * @param rimRadius null where it is not known
 */
record Wheel(
        double x,
        double centreHeight,
        double radius,
        @Nullable Double rimRadius) {

    /** Standing on the ground without load. */
    static Wheel of(double x, double diameter, @Nullable Double rimDiameter) {
        return new Wheel(x, diameter / 2, diameter / 2, rimDiameter == null ? null : rimDiameter / 2);
    }
}
