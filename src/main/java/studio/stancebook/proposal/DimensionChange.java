package studio.stancebook.proposal;

/**
 * One recorded thing that differs between two revisions, in words.
 *
 * @param label of the thing
 * @param from what it was; empty when it was not recorded
 * @param to what it is; empty when it is no longer recorded
 * @param difference with sign and unit; empty where there is none to tell
 */
public record DimensionChange(String label, String from, String to, String difference) {}
