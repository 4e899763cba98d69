package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.List;

/** Collects the problems of one row, the first of each kind and the number of all, and knows what becomes of an optional value that cannot be read. */
public final class Problems {

    /** Most errors, and most queries, of a row that are listed. */
    static final int MOST_LISTED = 100;

    private final long row;
    private final String vehicle;
    private final boolean partial;
    private final List<RowProblem> found = new ArrayList<>();
    private int errors;
    private int queries;

    /**
     * @param row the number of the row
     * @param vehicle the name in the row; empty where it has none
     * @param partial true when an optional value is left out with a query, false when it keeps the row out
     */
    public Problems(long row, String vehicle, boolean partial) {
        this.row = row;
        this.vehicle = vehicle;
        this.partial = partial;
    }

    /** The number of the row. */
    public long row() {
        return row;
    }

    /** A problem that keeps the row out. */
    public void error(String column, String value, String message) {
        add(column, value, message, Severity.ERROR);
    }

    /** A question about a row that comes in. */
    public void query(String column, String value, String message) {
        add(column, value, message, Severity.QUERY);
    }

    /** An optional value that cannot be had: left out with a query, or the row stays out. */
    public void unreadable(String column, String value, String message) {
        if (partial) {
            query(column, value, message + (message.endsWith(".") ? "" : ".") + " Left out.");
        } else {
            error(column, value, message);
        }
    }

    private void add(String column, String value, String message, Severity severity) {
        int before = severity == Severity.ERROR ? errors++ : queries++;
        if (before < MOST_LISTED) {
            found.add(new RowProblem(row, vehicle, column, value, message, severity));
        }
    }

    /** True when the row stays out. */
    public boolean anyError() {
        return errors > 0;
    }

    /** How many problems there are, those included that are not listed. */
    public int count() {
        return errors + queries;
    }

    /** How many errors are not listed. */
    public int moreErrors() {
        return Math.max(0, errors - MOST_LISTED);
    }

    /** How many queries are not listed. */
    public int moreQueries() {
        return Math.max(0, queries - MOST_LISTED);
    }

    /** What was found so far and is listed, in order. */
    public List<RowProblem> found() {
        return List.copyOf(found);
    }
}
