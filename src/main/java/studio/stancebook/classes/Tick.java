package studio.stancebook.classes;

/**
 * One benchmark on the scale of a measure.
 *
 * @param value in the measure's unit
 */
public record Tick(long packageId, String name, double value) {}
