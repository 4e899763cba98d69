package studio.stancebook.operations.backup;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** What H2 and PostgreSQL say differently. */
enum Dialect {

    /** Snapshots are taken of every table at the first statement; long results are read row by row on request only. */
    H2(
            Connection.TRANSACTION_SERIALIZABLE,
            "SELECT SEQUENCE_NAME, NULL, BASE_VALUE FROM INFORMATION_SCHEMA.SEQUENCES WHERE SEQUENCE_SCHEMA = SCHEMA()"
                    + " UNION ALL SELECT TABLE_NAME, COLUMN_NAME, IDENTITY_BASE FROM INFORMATION_SCHEMA.COLUMNS"
                    + " WHERE TABLE_SCHEMA = SCHEMA() AND IS_IDENTITY = 'YES' ORDER BY 1",
            "SET LAZY_QUERY_EXECUTION 1",
            "SET LAZY_QUERY_EXECUTION 0"),

    POSTGRESQL(
            Connection.TRANSACTION_REPEATABLE_READ,
            "SELECT c.table_name, c.column_name, COALESCE(s.last_value + s.increment_by, s.start_value)"
                    + " FROM pg_sequences s LEFT JOIN information_schema.columns c ON c.table_schema = s.schemaname"
                    + " AND c.is_identity = 'YES' AND pg_get_serial_sequence(quote_ident(c.table_name), c.column_name)"
                    + " = quote_ident(s.schemaname) || '.' || quote_ident(s.sequencename)"
                    + " WHERE s.schemaname = current_schema() AND c.table_name IS NOT NULL"
                    + " UNION ALL SELECT s.sequencename, NULL, COALESCE(s.last_value + s.increment_by, s.start_value)"
                    + " FROM pg_sequences s WHERE s.schemaname = current_schema() AND NOT EXISTS"
                    + " (SELECT 1 FROM information_schema.columns c WHERE c.table_schema = s.schemaname"
                    + " AND c.is_identity = 'YES' AND pg_get_serial_sequence(quote_ident(c.table_name), c.column_name)"
                    + " = quote_ident(s.schemaname) || '.' || quote_ident(s.sequencename)) ORDER BY 1",
            "SELECT 1",
            "SELECT 1");

    private final int snapshotIsolation;
    private final String counters;
    private final String beforeReading;
    private final String afterReading;

    Dialect(int snapshotIsolation, String counters, String beforeReading, String afterReading) {
        this.snapshotIsolation = snapshotIsolation;
        this.counters = counters;
        this.beforeReading = beforeReading;
        this.afterReading = afterReading;
    }

    static Dialect of(Connection connection) throws SQLException {
        return connection.getMetaData().getDatabaseProductName().equals("H2") ? H2 : POSTGRESQL;
    }

    /** A query for name, identity column or NULL, and next value of everything that counts by itself. */
    String counters() {
        return counters;
    }

    /** From here on the connection sees the store as it is now. */
    void beginSnapshot(Connection connection) throws SQLException {
        execute(connection, beforeReading);
        connection.setTransactionIsolation(snapshotIsolation);
        connection.setAutoCommit(false);
    }

    void endSnapshot(Connection connection) throws SQLException {
        connection.rollback();
        connection.setAutoCommit(true);
        execute(connection, afterReading);
    }

    private static void execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
