package studio.stancebook.exchange.table;

import java.io.Closeable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A heading and rows, read once from top to bottom; no more than one row is held. */
public interface Table extends Closeable {

    /** The cells of row 1, without surrounding space; a heading may be empty, and two may be the same. */
    List<String> headings();

    /**
     * The next row that is not blank; null after the last.
     *
     * @throws UnreadableTable if the file is broken here, so that nothing after it can be trusted
     * @throws TableTooLarge if a limit of {@link TableLimits} is passed
     */
    @Nullable
    TableRow next();

    /** How much of the file is behind, from 0 to 1. */
    double share();
}
