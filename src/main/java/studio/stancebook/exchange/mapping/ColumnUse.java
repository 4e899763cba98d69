package studio.stancebook.exchange.mapping;

/**
 * What one column holds.
 *
 * @param index of the column, from 0
 * @param heading as messages name the column
 * @param unit of its numbers; {@link ColumnUnit#NONE} when it holds none
 */
public record ColumnUse(int index, String heading, Target target, ColumnUnit unit) {}
