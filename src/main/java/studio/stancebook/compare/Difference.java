package studio.stancebook.compare;

import java.util.OptionalDouble;
import studio.stancebook.measure.Measure;

/**
 * How one differs from the reference in one measure.
 *
 * @param name of the one
 * @param reference the reference's value, in the measure's unit
 * @param value its own
 * @param mm the difference of the lengths behind the two values; empty where the measure is no length in wheels or one of
 *     the two is a sketch without dimension
 * @param spreads the difference over the robust spread of the reference's class, 1.4826 MAD; empty where the class has too
 *     few values, or none that differ
 */
public record Difference(
        Measure measure, String name, double reference, double value, OptionalDouble mm, OptionalDouble spreads) {

    /** In the measure's unit. */
    public double difference() {
        return value - reference;
    }
}
