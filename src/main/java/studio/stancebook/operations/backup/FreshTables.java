package studio.stancebook.operations.backup;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.stream.Stream;
import javax.sql.DataSource;

/**
 * Opens an H2 file anew after tables were made in it. H2 (seen with 2.4.240) keeps a check that lists values, such as {@code
 * CHECK (role IN ('lead', 'viewer'))}, bound to the connection that made it, and refuses every row from the moment that
 * connection is closed, as the pool does after half an hour. A check that is read from the file is bound to the database.
 */
final class FreshTables {

    private FreshTables() {}

    /** Leaves alone what is not in a file of this process: there is nobody to open it anew. */
    static void settle(DataSource store) throws SQLException {
        HikariDataSource pool = store.unwrap(HikariDataSource.class);
        Connection connection = pool.getConnection();
        try (Statement statement = connection.createStatement()) {
            if (isFileOfOurs(connection.getMetaData().getURL())) {
                statement.execute("SHUTDOWN");
                pool.getHikariPoolMXBean().softEvictConnections();
            }
        } finally {
            pool.evictConnection(connection);
        }
    }

    private static boolean isFileOfOurs(String url) {
        return url.startsWith("jdbc:h2:")
                && Stream.of("mem:", "tcp:", "ssl:").noneMatch(url.substring("jdbc:h2:".length())::startsWith);
    }
}
