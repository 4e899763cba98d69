package studio.stancebook.account.internal;

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
import tools.jackson.databind.json.JsonMapper;

/**
 * What a studio had before script 025 tells its people by id after it. Ada (1) and Ben (2) are alone with their names, Cleo is
 * the name of two, and nobody is called Dora.
 */
class PeopleByIdMigrationTest {

    private static final String PACKAGE = "INSERT INTO benchmark_package (id, segment_id, class_revision, name, origin,"
            + " dimensions, recorded, dimension_digest, measures, scalars, values_set_aside, measure_layout,"
            + " set_aside_reason, set_aside_by, set_aside_at, version, created_at, created_by, changed_at, changed_by)"
            + " VALUES (%d, 1, 1, 'Package %d', 'DRAWING', '{}', '%s', '', ARRAY[1.0], ARRAY[2.0], '%s', '',"
            + " 'Why not', '%s', CURRENT_TIMESTAMP, 0, CURRENT_TIMESTAMP, '%s', CURRENT_TIMESTAMP, '%s')";

    private static final String BAND = "INSERT INTO band_version (segment_id, measure, version, method, setting,"
            + " class_size, provisional, explanation, reason, class_revision, set_at, set_by)"
            + " VALUES (1, 'wheelbase-share', %d, 'none', '{}', 0, FALSE, '', '', 1, CURRENT_TIMESTAMP, '%s')";

    private static final String PROPOSAL = "INSERT INTO proposal (name, segment_id, stage, owner_id, newest_revision,"
            + " judged, outside, too_close, version, created_at, changed_at, changed_by)"
            + " VALUES ('Proposal', 1, 'DRAFT', 1, 1, 0, 0, 0, 0, CURRENT_TIMESTAMP, CURRENT_TIMESTAMP, '%s')";

    private static final String REVISION = "INSERT INTO proposal_revision (proposal_id, number, segment_id, dimensions,"
            + " recorded, note, author_id, author_name, made_at, class_revision, assessment, judged, outside, too_close)"
            + " VALUES (1, 1, 1, '{}', '%s', '', 1, 'Ada', CURRENT_TIMESTAMP, 1, '[]', 0, 0, 0)";

    @ParameterizedTest
    @ValueSource(strings = {"h2", "postgresql"})
    void fillsTheIdWhereExactlyOnePersonBearsTheName(String vendor) {
        DataSource source = vendor.equals("h2")
                ? JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "")
                : PostgresDatabase.make();
        JdbcClient database = JdbcClient.create(source);
        upTo(source, vendor, "024");
        List.of("Ada", "Ben", "Cleo", "Cleo").forEach(name -> person(database, name));
        run(
                database,
                "INSERT INTO segment (segment_key, name, description, version, revision, created_at)"
                        + " VALUES ('s', 'S', '', 0, 1, CURRENT_TIMESTAMP)");
        run(database, PACKAGE, 1, 1, mark("*", "Ada"), aside("Ben"), "Ben", "Ada", "Ben");
        run(
                database,
                PACKAGE,
                2,
                2,
                "{" + inner("wheelbase", "Ada") + "," + inner("cowl", "Cleo") + "," + inner("hPoint", "Ben") + "}",
                aside("Dora"),
                "Cleo",
                "Dora",
                "Cleo");
        List.of("Ada", "Cleo")
                .forEach(name -> run(
                        database,
                        "INSERT INTO package_query (id, package_id, cause, question, raised_at, answer, settled_by, settled_at)"
                                + " VALUES ((SELECT COUNT(*) + 1 FROM package_query), 1, 'BROUGHT_IN', 'Why?', CURRENT_TIMESTAMP,"
                                + " 'So', '%s', CURRENT_TIMESTAMP)",
                        name));
        run(database, BAND, 1, "Ben");
        run(database, BAND, 2, "Dora");
        run(database, PROPOSAL, "Ben");
        run(database, PROPOSAL, "Cleo");
        run(database, REVISION, mark("wheelbase", "Ben"));
        run(
                database,
                "INSERT INTO studio_ratio (ratio_key, name, numerator, denominator, added_by, added_at)"
                        + " VALUES ('r', 'R', 'wheelbase', 'wheelbase', 'Ada', CURRENT_TIMESTAMP)");

        upTo(source, vendor, "025.1");

        assertThat(ids(database, "created_by_id", "benchmark_package")).containsExactly(1L, 0L);
        assertThat(ids(database, "changed_by_id", "benchmark_package")).containsExactly(2L, 0L);
        assertThat(ids(database, "set_aside_by_id", "benchmark_package")).containsExactly(2L, 0L);
        assertThat(ids(database, "settled_by_id", "package_query")).containsExactly(1L, 0L);
        assertThat(ids(database, "set_by_id", "band_version")).containsExactly(2L, 0L);
        assertThat(ids(database, "changed_by_id", "proposal")).containsExactly(2L, 0L);
        assertThat(ids(database, "added_by_id", "studio_ratio")).containsExactly(1L);
        assertThat(trees(database, "SELECT recorded FROM benchmark_package ORDER BY id"))
                .containsExactly(
                        Map.of("*", marked("Ada", 1)),
                        Map.of("wheelbase", marked("Ada", 1), "cowl", marked("Cleo"), "hPoint", marked("Ben", 2)));
        assertThat(trees(database, "SELECT values_set_aside FROM benchmark_package ORDER BY id"))
                .containsExactly(
                        Map.of("cowl", List.of("A \"reason\"", "Ben", AT, "2")),
                        Map.of("cowl", List.of("A \"reason\"", "Dora", AT)));
        assertThat(trees(database, "SELECT recorded FROM proposal_revision"))
                .containsExactly(Map.of("wheelbase", marked("Ben", 2)));
    }

    private static final String AT = "2026-01-05T08:00:00Z";

    private static String mark(String key, String by) {
        return "{" + inner(key, by) + "}";
    }

    private static String inner(String key, String by) {
        return "\"" + key + "\":{\"at\":\"" + AT + "\",\"by\":\"" + by + "\"}";
    }

    private static String aside(String by) {
        return "{\"cowl\":[\"A \\\"reason\\\"\",\"" + by + "\",\"" + AT + "\"]}";
    }

    private static Map<String, Object> marked(String by) {
        return Map.of("by", by, "at", AT);
    }

    private static Map<String, Object> marked(String by, int id) {
        return Map.of("by", by, "byId", id, "at", AT);
    }

    private static void person(JdbcClient database, String name) {
        database.sql(
                        "INSERT INTO person (email, display_name, role, password_hash, password_changed_at, active, version,"
                                + " created_at) VALUES (:email, :name, 'DESIGNER', '', CURRENT_TIMESTAMP, TRUE, 0, CURRENT_TIMESTAMP)")
                .param("email", UUID.randomUUID() + "@studio.example")
                .param("name", name)
                .update();
    }

    private static void upTo(DataSource source, String vendor, String version) {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration", "classpath:db/migration-" + vendor)
                .target(version)
                .load()
                .migrate();
    }

    private static void run(JdbcClient database, String statement, Object... values) {
        database.sql(statement.formatted(values)).update();
    }

    private static List<Long> ids(JdbcClient database, String column, String table) {
        return database.sql("SELECT COALESCE(" + column + ", 0) FROM " + table + " ORDER BY id")
                .query(Long.class)
                .list();
    }

    private static List<Object> trees(JdbcClient database, String query) {
        JsonMapper json = JsonMapper.builder().build();
        return database.sql(query).query(String.class).list().stream()
                .map(text -> json.readValue(text, Object.class))
                .toList();
    }
}
