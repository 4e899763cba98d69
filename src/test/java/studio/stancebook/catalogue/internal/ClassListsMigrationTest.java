package studio.stancebook.catalogue.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.PostgresDatabase;

/** What a studio had before script 015 is counted and listed after it. */
class ClassListsMigrationTest {

    private static final String PACKAGE = "INSERT INTO benchmark_package (id, segment_id, class_revision, name, origin,"
            + " dimensions, recorded, dimension_digest, measures, scalars, values_set_aside, class_measures,"
            + " measure_layout, set_aside_reason, set_aside_by, set_aside_at, version, created_at, created_by,"
            + " changed_at, changed_by) VALUES (%d, %d, 1, '%s', 'DRAWING', '{}', '{}', '', ARRAY[1.0], ARRAY[2.0], '{}',"
            + " %s, '', %s, 0, CURRENT_TIMESTAMP, 'Lead', CURRENT_TIMESTAMP, 'Lead')";

    private static final String QUERY = "INSERT INTO package_query (id, package_id, cause, question, raised_at, answer,"
            + " settled_by, settled_at) VALUES (%d, %d, 'BROUGHT_IN', 'Why?', CURRENT_TIMESTAMP, %s)";

    @ParameterizedTest
    @ValueSource(strings = {"h2", "postgresql"})
    void countsAndListsWhatWasThere(String vendor) {
        DataSource source = vendor.equals("h2")
                ? JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "")
                : PostgresDatabase.make();
        JdbcClient database = JdbcClient.create(source);
        upTo(source, vendor, "010");
        for (int segment = 1; segment <= 2; segment++) {
            run(
                    database,
                    "INSERT INTO segment (id, segment_key, name, description, version, revision, created_at)"
                            + " VALUES (%d, 's%d', 'S', '', 0, 1, CURRENT_TIMESTAMP)",
                    segment,
                    segment);
        }
        run(database, PACKAGE, 11, 1, "Counts", "NULL", "NULL, NULL, NULL");
        run(database, PACKAGE, 12, 1, "Apart", "NULL", "'Why not', 'Lead', CURRENT_TIMESTAMP");
        run(database, PACKAGE, 13, 1, "Value apart", "ARRAY[CAST(NULL AS DOUBLE PRECISION)]", "NULL, NULL, NULL");
        run(database, PACKAGE, 21, 2, "Elsewhere", "NULL", "NULL, NULL, NULL");
        run(database, QUERY, 1, 11, "NULL, NULL, NULL");
        run(database, QUERY, 2, 11, "'So', 'Lead', CURRENT_TIMESTAMP");
        run(database, QUERY, 3, 21, "NULL, NULL, NULL");

        upTo(source, vendor, "015");

        assertThat(longs(database, "SELECT packages FROM segment ORDER BY id")).containsExactly(3L, 1L);
        assertThat(longs(database, "SELECT package_id FROM package_apart WHERE segment_id = 1 ORDER BY 1"))
                .containsExactly(12L, 13L);
        assertThat(longs(database, "SELECT COUNT(*) FROM package_apart WHERE segment_id = 2"))
                .containsExactly(0L);
        assertThat(longs(database, "SELECT COALESCE(open_in, 0) FROM package_query ORDER BY id"))
                .containsExactly(1L, 0L, 2L);
    }

    private static void upTo(DataSource source, String vendor, String version) {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration", "classpath:db/migration-" + vendor)
                .target(version)
                .placeholders(Map.of())
                .load()
                .migrate();
    }

    private static void run(JdbcClient database, String statement, Object... values) {
        database.sql(statement.formatted(values)).update();
    }

    private static List<Long> longs(JdbcClient database, String query) {
        return database.sql(query).query(Long.class).list();
    }
}
