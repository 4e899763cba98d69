package studio.stancebook.operations.backup;

import java.io.IOException;
import java.sql.BatchUpdateException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Brings a backup into a store that has the tables but nothing in them. */
final class Restore {

    private static final int ROWS_AT_A_TIME = 500;

    private final DataSource store;

    Restore(DataSource store) {
        this.store = store;
    }

    /** A table that has rows, if there is one. */
    Optional<String> anythingIn() throws SQLException {
        try (Connection connection = store.getConnection();
                Statement statement = connection.createStatement()) {
            for (StoredTable table : StoreTables.of(connection)) {
                try (ResultSet first =
                        statement.executeQuery("SELECT 1 FROM " + StoredTable.quoted(table.name()) + " LIMIT 1")) {
                    if (first.next()) {
                        return Optional.of(table.key());
                    }
                }
            }
            return Optional.empty();
        }
    }

    String schema() throws SQLException {
        try (Connection connection = store.getConnection()) {
            return Schema.version(connection);
        }
    }

    /** All of it or, if anything goes wrong, nothing. */
    void run(BackupFile backup) throws SQLException, IOException {
        try (Connection connection = store.getConnection()) {
            // Counters first: they cannot be part of the transaction, and in an empty store they do no harm.
            Counters.restart(connection, backup.counters());
            connection.setAutoCommit(false);
            try {
                load(backup, connection);
                connection.commit();
            } finally {
                connection.rollback();
                connection.setAutoCommit(true);
            }
        }
    }

    private static void load(BackupFile backup, Connection connection) throws SQLException, IOException {
        Loading loading = new Loading(connection);
        try {
            backup.read(loading);
            loading.refuseMissingTables();
        } catch (BatchUpdateException e) {
            throw e.getNextException() == null ? e : e.getNextException();
        } finally {
            loading.close();
        }
    }

    /** Writes rows table by table. */
    private static final class Loading implements BackupFile.Reader, AutoCloseable {

        private final Connection connection;
        private final Map<String, StoredTable> expected = new TreeMap<>();
        private List<ColumnKind> kinds = List.of();
        private @Nullable PreparedStatement insert;
        private int waiting;

        Loading(Connection connection) throws SQLException {
            this.connection = connection;
            StoreTables.of(connection).forEach(table -> expected.put(table.key(), table));
        }

        @Override
        public void table(String name, Map<String, ColumnKind> columns) throws SQLException {
            StoredTable table = expected.remove(name);
            if (table == null || !kindsOf(table).equals(columns)) {
                throw new DamagedBackup("its table " + name + " is not as this program has it");
            }
            kinds = new ArrayList<>(columns.values());
            insert = connection.prepareStatement(table.insert());
        }

        private static Map<String, ColumnKind> kindsOf(StoredTable table) {
            Map<String, ColumnKind> kinds = new LinkedHashMap<>();
            table.columns().forEach(column -> kinds.put(StoredTable.key(column.name()), column.kind()));
            return kinds;
        }

        @Override
        public void row(JsonNode values) throws SQLException {
            PreparedStatement statement = java.util.Objects.requireNonNull(insert);
            for (int i = 0; i < kinds.size(); i++) {
                JsonNode value = values.get(i);
                statement.setObject(i + 1, value.isNull() ? null : kinds.get(i).forStore(value, connection));
            }
            statement.addBatch();
            waiting++;
            if (waiting == ROWS_AT_A_TIME) {
                send(statement);
            }
        }

        @Override
        public void end() throws SQLException {
            send(java.util.Objects.requireNonNull(insert));
            close();
        }

        private void send(PreparedStatement statement) throws SQLException {
            if (waiting > 0) {
                statement.executeBatch();
                waiting = 0;
            }
        }

        void refuseMissingTables() {
            if (!expected.isEmpty()) {
                throw new DamagedBackup(
                        "it has no table " + expected.keySet().iterator().next());
            }
        }

        @Override
        public void close() throws SQLException {
            if (insert != null) {
                insert.close();
                insert = null;
            }
        }
    }
}
