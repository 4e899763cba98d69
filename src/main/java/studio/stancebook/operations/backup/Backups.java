package studio.stancebook.operations.backup;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.concurrent.Semaphore;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.stereotype.Component;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.operations.store.StoreTrouble;
import studio.stancebook.problem.Conflict;

/** Makes backups while the studio is worked in. */
@Component
public class Backups {

    private static final Logger LOG = LoggerFactory.getLogger(Backups.class);
    private static final DateTimeFormatter IN_NAMES =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final DataSource store;
    private final Clock clock;
    private final String program;
    private final ApplicationEventPublisher events;
    private final Semaphore turn = new Semaphore(1);

    Backups(DataSource store, Clock clock, ObjectProvider<BuildProperties> build, ApplicationEventPublisher events) {
        this.events = events;
        this.store = store;
        this.clock = clock;
        BuildProperties properties = build.getIfAvailable();
        this.program = properties == null ? "unknown" : String.valueOf(properties.getVersion());
    }

    /** A name for a backup made now, such as {@code stancebook-20261125-141503.jsonl.gz}; the time is UTC. */
    public String newName() {
        return "stancebook-" + IN_NAMES.format(clock.instant()) + ".jsonl.gz";
    }

    /**
     * Writes the store as it is at this moment; what is recorded meanwhile is not in it, and nobody has to wait.
     *
     * @throws Conflict if another backup is being made: two at once would only make both slow
     */
    public void write(BackupTarget target) throws IOException {
        if (!turn.tryAcquire()) {
            throw new Conflict("Another backup is being made at this moment: wait until it is done.");
        }
        try {
            long rows = writeSnapshot(target);
            LOG.info("A backup of {} rows was made", rows);
            tell(rows);
        } catch (SQLException e) {
            throw new IOException("The store could not be read for a backup", e);
        } finally {
            turn.release();
        }
    }

    /** A line in the activity record; the backup is good without it, and on a full disk it is needed most. */
    private void tell(long rows) {
        try {
            FieldValues facts = FieldValues.of("rows", rows);
            events.publishEvent(
                    ActivityEvent.of("taken", "backup", "studio", "Backup of the studio", FieldValues.none(), facts));
        } catch (RuntimeException failure) {
            StoreTrouble trouble = StoreTrouble.of(failure).orElseThrow(() -> failure);
            LOG.error("The backup was made, but that it was made could not be recorded ({})", trouble);
        }
    }

    private long writeSnapshot(BackupTarget target) throws SQLException, IOException {
        Connection connection = store.getConnection();
        try {
            Dialect dialect = Dialect.of(connection);
            dialect.beginSnapshot(connection);
            try {
                Heading heading = new Heading(Heading.FORMAT, Schema.version(connection), program, clock.instant());
                return BackupWriter.write(connection, heading, target.open());
            } finally {
                dialect.endSnapshot(connection);
            }
        } finally {
            JdbcUtils.closeConnection(connection);
        }
    }
}
