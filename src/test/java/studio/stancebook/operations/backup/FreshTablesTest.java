package studio.stancebook.operations.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import studio.stancebook.Stancebook;

/** A studio whose tables are new takes rows for longer than the pool keeps the connection that made them. */
class FreshTablesTest {

    private static final String TABLE = "CREATE TABLE person (role VARCHAR(9) CHECK (role IN ('lead', 'viewer')))";
    private static final String ROW = "INSERT INTO person VALUES ('lead')";

    @TempDir
    Path data;

    @Test
    void takeRowsAfterTheConnectionThatMadeThemIsClosed() throws SQLException {
        HikariDataSource store = new HikariDataSource();
        store.setJdbcUrl(url("store"));
        store.setUsername("sa");
        try (Connection maker = store.getConnection()) {
            execute(maker, TABLE);
        }
        FreshTables.settle(store);

        try (Connection later = connection("store")) {
            store.close();
            assertThat(execute(later, ROW)).isEqualTo(1);
            assertThatThrownBy(() -> execute(later, "INSERT INTO person VALUES ('nobody')"))
                    .hasMessageContaining("Check constraint violation");
        }
    }

    /** When this fails, H2 does better than it did, and opening anew can go. */
    @Test
    void wouldNotWithoutOpeningAnew() throws SQLException {
        try (Connection later = connection("store")) {
            try (Connection maker = connection("store")) {
                execute(maker, TABLE);
            }
            assertThatThrownBy(() -> execute(later, ROW)).hasMessageContaining("Check constraint invalid");
        }
    }

    @Test
    void letSomebodyBeAddedWhenNoConnectionOfTheFirstStartIsLeft() throws SQLException {
        try (ConfigurableApplicationContext studio = new SpringApplicationBuilder(Stancebook.class)
                        .run("--server.port=0", "--stancebook.data=" + data);
                Connection later = connection("stancebook")) {
            studio.getBean(HikariDataSource.class).close();

            assertThat(execute(later, """
                    INSERT INTO person (active, created_at, display_name, email, password_changed_at, password_hash, role, version)
                    VALUES (TRUE, NOW(), 'Late', 'late@studio.example', NOW(), 'none', 'LEAD', 0)
                    """)).isEqualTo(1);
        }
    }

    private String url(String name) {
        return "jdbc:h2:file:" + data.resolve(name) + ";DB_CLOSE_ON_EXIT=FALSE;WRITE_DELAY=0;TRACE_LEVEL_FILE=0";
    }

    private Connection connection(String name) throws SQLException {
        return DriverManager.getConnection(url(name), "sa", "");
    }

    private static int execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            return statement.execute(sql) ? 0 : statement.getUpdateCount();
        }
    }
}
