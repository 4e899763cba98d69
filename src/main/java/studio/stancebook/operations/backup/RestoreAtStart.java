package studio.stancebook.operations.backup;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.stereotype.Component;
import studio.stancebook.problem.CannotStart;

/**
 * Brings the tables up to this program, then a backup into them if one is to be restored; both before anything else can look
 * at the store.
 */
@Component
class RestoreAtStart implements FlywayMigrationStrategy {

    /** The setting that names the backup. */
    static final String SETTING = "stancebook.restore";

    private static final Logger LOG = LoggerFactory.getLogger(RestoreAtStart.class);

    private final String file;

    RestoreAtStart(@Value("${" + SETTING + ":}") String file) {
        this.file = file;
    }

    @Override
    public void migrate(Flyway flyway) {
        refuseNewer(flyway);
        if (file.isBlank()) {
            bringUp(flyway);
        } else {
            restore(flyway, RestoreCheck.soundBackup(Path.of(file)));
        }
    }

    private static void bringUp(Flyway flyway) {
        if (flyway.migrate().migrationsExecuted > 0) {
            try {
                FreshTables.settle(flyway.getConfiguration().getDataSource());
            } catch (SQLException e) {
                throw new IllegalStateException("The database could not be opened anew after its tables were made", e);
            }
        }
    }

    private static void refuseNewer(Flyway flyway) {
        Optional<MigrationInfo> unknown = Arrays.stream(flyway.info().applied())
                .filter(script -> script.getState() == MigrationState.FUTURE_SUCCESS)
                .findFirst();
        if (unknown.isPresent()) {
            throw new CannotStart(
                    "The database was used by a newer Stancebook: its tables are at "
                            + unknown.get().getVersion() + ", which this version does not know.",
                    "Start that newer version. To go back to this one, restore a backup that this one made into an empty"
                            + " data folder or database.");
        }
    }

    private void restore(Flyway flyway, BackupFile backup) {
        Restore restore = new Restore(flyway.getConfiguration().getDataSource());
        try {
            refuseUnlessEmpty(restore);
            bringUp(flyway);
            refuseOtherSchema(backup, restore.schema());
            restore.run(backup);
            LOG.info(
                    "{} rows were restored from {}, made at {}",
                    backup.rows(),
                    file,
                    backup.heading().madeAt());
        } catch (SQLException | IOException | DamagedBackup e) {
            CannotStart refusal = new CannotStart(
                    "The backup " + file + " could not be restored: " + e.getMessage() + ".",
                    "Nothing of it was recorded. Take another copy of it, or an older backup.");
            refusal.initCause(e);
            throw refusal;
        }
    }

    private static void refuseUnlessEmpty(Restore restore) throws SQLException {
        Optional<String> table = restore.anythingIn();
        if (table.isPresent()) {
            throw new CannotStart(
                    "A backup is restored into an empty studio only, and in this one there is something already (in "
                            + table.get() + "). Nothing was changed.",
                    "If it was restored before, leave out --" + SETTING
                            + ". Otherwise set STANCEBOOK_DATA to an empty folder, or STANCEBOOK_DB_URL to an empty"
                            + " database.");
        }
    }

    private static void refuseOtherSchema(BackupFile backup, String schema) {
        if (!backup.heading().schema().equals(schema)) {
            throw new CannotStart(
                    "The backup was made by version " + backup.heading().program() + " with tables at "
                            + backup.heading().schema() + "; those of this version are at " + schema + ".",
                    "Restore it with the version that made it, then start this version on that data: it brings the tables"
                            + " up by itself.");
        }
    }
}
