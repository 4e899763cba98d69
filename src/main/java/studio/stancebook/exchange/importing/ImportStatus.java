package studio.stancebook.exchange.importing;

import org.jspecify.annotations.Nullable;

/**
 * How far a run is, at one moment.
 *
 * @param dryRun true when the file is only checked
 * @param percent how much is done, whole
 * @param report what came of it; null while it runs and after a failure
 * @param failure why the file as a whole could not be read, for the person; null if it could
 */
public record ImportStatus(
        boolean dryRun,
        int percent,
        @Nullable ImportReport report,
        @Nullable String failure) {

    public boolean running() {
        return report == null && failure == null;
    }
}
