package studio.stancebook.exchange.table;

import studio.stancebook.problem.UnsupportedMedia;

/** A file whose content is no CSV, workbook or JSON, whatever its name says. */
public final class NotATable extends UnsupportedMedia {

    NotATable(String message) {
        super(message);
    }
}
