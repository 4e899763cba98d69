package studio.stancebook.exchange.importing;

/**
 * What somebody chose for one column.
 *
 * @param target the id of a target; empty to leave the column out
 * @param unit the key of a unit; empty where none was chosen
 */
public record ColumnChoice(String target, String unit) {

    static final ColumnChoice NONE = new ColumnChoice("", "");
}
