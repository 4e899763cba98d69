package studio.stancebook;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/** Gives a server a database of its own on the one PostgreSQL that runs for all tests of this process. */
public class PostgresDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static final AtomicInteger MADE = new AtomicInteger();

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        String name = "studio" + MADE.incrementAndGet();
        create(name);
        TestPropertyValues.of(
                        "spring.datasource.url=" + Running.POSTGRES.getJdbcUrl("postgres", name),
                        "spring.datasource.username=postgres",
                        "spring.datasource.password=")
                .applyTo(context);
    }

    /** A new database, without any table. */
    public static DataSource make() {
        String name = "studio" + MADE.incrementAndGet();
        create(name);
        return Running.POSTGRES.getDatabase("postgres", name);
    }

    private static void create(String name) {
        try (Connection connection = Running.POSTGRES.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE DATABASE " + name);
        } catch (SQLException e) {
            throw new IllegalStateException("No database " + name + " on the PostgreSQL for tests", e);
        }
    }

    /** Started when first asked for; it stops with the process. */
    private static final class Running {

        private static final EmbeddedPostgres POSTGRES = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.start();
            } catch (IOException e) {
                throw new UncheckedIOException("PostgreSQL for tests did not start", e);
            }
        }
    }
}
