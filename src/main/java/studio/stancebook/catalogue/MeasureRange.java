package studio.stancebook.catalogue;

import studio.stancebook.quantity.Interval;

/**
 * The values of one measure that are looked for.
 *
 * @param measure the key of the measure
 * @param values in the measure's unit, ends included; infinite where there is no limit
 */
public record MeasureRange(String measure, Interval values) {}
