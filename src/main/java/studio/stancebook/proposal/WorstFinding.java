package studio.stancebook.proposal;

/**
 * The measure that is furthest outside its band, by widths of the band.
 *
 * @param measure its name
 * @param verdict the key of its verdict
 */
public record WorstFinding(String measure, String verdict) {}
