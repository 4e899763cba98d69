package studio.stancebook.exchange.importing;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;

/**
 * How a file is brought in.
 *
 * @param dryRun check only, write nothing
 * @param partial keep the good rows, and leave an optional value that cannot be read out of its row, with a query
 * @param createSegments make segments that are not there yet
 * @param origin of rows that name none
 * @param update change packages that are there where a row differs, instead of refusing the row
 * @param segments keys of segments that are there, by the words of the file that stand for them
 * @param seen the {@link ImportReport#state} of the check that a person saw; null where nobody saw one
 */
public record ImportOptions(
        boolean dryRun,
        boolean partial,
        boolean createSegments,
        Origin origin,
        boolean update,
        Map<String, String> segments,
        @Nullable String seen) {

    public ImportOptions {
        segments = Map.copyOf(segments);
    }

    /** Options that add packages only. */
    public ImportOptions(boolean dryRun, boolean partial, boolean createSegments, Origin origin) {
        this(dryRun, partial, createSegments, origin, false, Map.of(), null);
    }

    /** The same, checking only. */
    public ImportOptions asDryRun() {
        return new ImportOptions(true, partial, createSegments, origin, update, segments, null);
    }

    /** The same, keeping the good rows. */
    public ImportOptions keepingGoodRows() {
        return new ImportOptions(dryRun, true, createSegments, origin, update, segments, seen);
    }

    /** The same, writing what a check has shown. */
    public ImportOptions writing(@Nullable String checked) {
        return new ImportOptions(false, partial, createSegments, origin, update, segments, checked);
    }
}
