package studio.stancebook.exchange.table;

import java.util.List;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Malformed;

/** A file of a known kind that is broken: letters that do not decode, a cut-off archive, a quotation that never ends. */
public final class UnreadableTable extends Malformed {

    UnreadableTable(String message) {
        super(message, List.of(new FieldError("file", message)));
    }
}
