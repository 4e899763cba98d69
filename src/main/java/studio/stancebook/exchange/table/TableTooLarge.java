package studio.stancebook.exchange.table;

import studio.stancebook.problem.TooLarge;

/** A table, a row or a cell beyond {@link TableLimits}. */
public final class TableTooLarge extends TooLarge {

    TableTooLarge(String message) {
        super(message);
    }
}
