package studio.stancebook.exchange.importing;

/** One run over a file in the background. */
public final class ImportJob {

    private volatile ImportStatus status;

    ImportJob(boolean dryRun) {
        status = new ImportStatus(dryRun, 0, null, null);
    }

    /** How far it is now; a later answer may differ. */
    public ImportStatus status() {
        return status;
    }

    void at(double share) {
        status = new ImportStatus(status.dryRun(), (int) (100 * share), null, null);
    }

    void done(ImportReport report) {
        status = new ImportStatus(status.dryRun(), 100, report, null);
    }

    void failed(String message) {
        status = new ImportStatus(status.dryRun(), 100, null, message);
    }
}
