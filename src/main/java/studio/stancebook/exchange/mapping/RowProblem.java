package studio.stancebook.exchange.mapping;

import studio.stancebook.exchange.table.TextLimit;

/**
 * Something about one row that a person should know.
 *
 * @param row as a person counts, the heading being row 1
 * @param vehicle the name in the row, shortened; empty where it has none
 * @param column the heading of the column, several with commas between; empty when it is about the row as a whole
 * @param value what is there, shortened; empty when nothing is
 * @param message what is wrong, and what would be accepted
 */
public record RowProblem(long row, String vehicle, String column, String value, String message, Severity severity) {

    public RowProblem {
        vehicle = TextLimit.shown(vehicle);
        column = TextLimit.shown(column);
        value = TextLimit.shown(value);
    }

    /** True when it keeps the row out. */
    public boolean error() {
        return severity == Severity.ERROR;
    }

    /** The same, about another column. */
    public RowProblem at(String otherColumn) {
        return new RowProblem(row, vehicle, otherColumn, value, message, severity);
    }

    /** The problem as a question to keep with the package. */
    public String question() {
        String what = value.isEmpty() ? "" : " \"" + value + "\"";
        return column.isEmpty() ? message : column + what + ": " + message;
    }
}
