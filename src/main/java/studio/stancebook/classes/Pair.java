package studio.stancebook.classes;

/**
 * One benchmark by two measures.
 *
 * @param x in the unit of the first
 * @param y in the unit of the second
 */
public record Pair(long packageId, String name, double x, double y) {}
