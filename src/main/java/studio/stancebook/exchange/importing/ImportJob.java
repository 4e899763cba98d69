package studio.stancebook.exchange.importing;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** One run over a file in the background. */
public final class ImportJob {

    private volatile ImportStatus status;
    private volatile @Nullable RefusedTable refused;

    ImportJob(boolean dryRun) {
        status = new ImportStatus(dryRun, 0, null, null);
    }

    /**
     * The refused rows as a table.
     *
     * @param rows how many it has; fewer than were refused where they are more than a file may hold
     */
    public record RefusedTable(Path file, int rows) {}

    /** How far it is now; a later answer may differ. */
    public ImportStatus status() {
        return status;
    }

    /** The rows that it refused; null while it runs, after a failure, and where the file is no table. */
    public @Nullable RefusedTable refused() {
        return status.running() ? null : refused;
    }

    void at(double share) {
        status = new ImportStatus(status.dryRun(), (int) (100 * share), null, null);
    }

    void keep(@Nullable RefusedTable table) {
        refused = table;
    }

    void done(ImportReport report) {
        status = new ImportStatus(status.dryRun(), 100, report, null);
    }

    void failed(String message) {
        status = new ImportStatus(status.dryRun(), 100, null, message);
    }

    /** Deletes what it left. */
    void forget() {
        RefusedTable table = refused;
        if (table != null) {
            ReceivedFiles.delete(table.file());
        }
    }
}
