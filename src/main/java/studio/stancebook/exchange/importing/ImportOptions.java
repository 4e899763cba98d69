package studio.stancebook.exchange.importing;

import studio.stancebook.dimension.Origin;

/**
 * How a file is brought in.
 *
 * @param dryRun check only, write nothing
 * @param partial keep the good rows, and leave an optional value that cannot be read out of its row, with a query
 * @param createSegments make segments that are not there yet
 * @param origin of rows that name none
 */
public record ImportOptions(boolean dryRun, boolean partial, boolean createSegments, Origin origin) {

    /** The same, checking only. */
    public ImportOptions asDryRun() {
        return new ImportOptions(true, partial, createSegments, origin);
    }
}
