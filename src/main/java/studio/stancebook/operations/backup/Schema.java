package studio.stancebook.operations.backup;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** The state of a store's tables. */
final class Schema {

    private Schema() {}

    /** The number of the newest script that was applied. */
    static String version(Connection connection) throws SQLException {
        String newest =
                "SELECT \"version\" FROM \"flyway_schema_history\" WHERE \"version\" IS NOT NULL AND \"success\""
                        + " ORDER BY \"installed_rank\" DESC";
        String version = "0";
        try (Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery(newest)) {
            while (found.next()) {
                String next = found.getString(1);
                version = version.compareTo(next) < 0 ? next : version;
            }
        }
        return version;
    }
}
