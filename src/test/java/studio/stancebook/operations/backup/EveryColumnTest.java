package studio.stancebook.operations.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import studio.stancebook.PostgresDatabase;

/** Whatever tables and columns there are, a backup carries every value of them from one database to another. */
class EveryColumnTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"H2, H2", "H2, POSTGRESQL", "POSTGRESQL, H2", "POSTGRESQL, POSTGRESQL"})
    void arrivesAsItWas(Dialect from, Dialect to) throws SQLException, IOException {
        DataSource source = migrated(from);
        DataSource target = migrated(to);
        AnyContent.dropChecks(source);
        AnyContent.dropChecks(target);
        new AnyContent(7).fill(source);

        new Restore(target).run(BackupFile.check(backUp(source)));

        Map<String, List<String>> before = StoreContent.of(source);
        assertThat(before.values()).allSatisfy(rows -> assertThat(rows).isNotEmpty());
        assertThat(StoreContent.of(target)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"H2, H2", "H2, POSTGRESQL", "POSTGRESQL, H2", "POSTGRESQL, POSTGRESQL"})
    void countsOnFromWhereItStood(Dialect from, Dialect to) throws SQLException, IOException {
        DataSource source = migrated(from);
        DataSource target = migrated(to);
        addSegment(source, "first");
        addSegment(source, "second");
        execute(source, "DELETE FROM segment WHERE segment_key = 'second'");
        long given = next(source);

        new Restore(target).run(BackupFile.check(backUp(source)));

        addSegment(target, "third");
        assertThat(StoreContent.of(target).get("segment"))
                .anySatisfy(row -> assertThat(row).contains("segment_key=third").contains("id=3,"));
        assertThat(next(target)).isEqualTo(given + 50);
    }

    private static long next(DataSource store) throws SQLException {
        try (Connection connection = store.getConnection();
                var statement = connection.createStatement();
                var found = statement.executeQuery("SELECT nextval('benchmark_package_seq')")) {
            found.next();
            return found.getLong(1);
        }
    }

    private static void addSegment(DataSource store, String key) throws SQLException {
        execute(
                store,
                "INSERT INTO segment (segment_key, name, description, version, revision, created_at) VALUES ('" + key
                        + "', 'A name', '', 0, 0, CURRENT_TIMESTAMP)");
    }

    private static void execute(DataSource store, String sql) throws SQLException {
        try (Connection connection = store.getConnection();
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private Path backUp(DataSource source) throws SQLException, IOException {
        Path file = Files.createTempFile(folder, "backup", ".jsonl.gz");
        try (Connection connection = source.getConnection();
                OutputStream out = Files.newOutputStream(file)) {
            Dialect dialect = Dialect.of(connection);
            dialect.beginSnapshot(connection);
            BackupWriter.write(connection, new Heading(1, "001", "test", Instant.EPOCH), out);
            dialect.endSnapshot(connection);
        }
        return file;
    }

    private static DataSource migrated(Dialect dialect) {
        DataSource store = dialect == Dialect.H2
                ? JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "")
                : PostgresDatabase.make();
        Flyway.configure()
                .dataSource(store)
                .locations(
                        "classpath:db/migration",
                        "classpath:db/migration-" + dialect.name().toLowerCase(Locale.ROOT))
                .load()
                .migrate();
        return store;
    }
}
