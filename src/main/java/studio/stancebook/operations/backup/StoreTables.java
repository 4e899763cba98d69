package studio.stancebook.operations.backup;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The tables of a store, read from the database itself, so that none can be forgotten. */
final class StoreTables {

    /** What belongs to the database and not to the studio, and who is signed in at the moment. */
    private static final Set<String> LEFT_OUT =
            Set.of("flyway_schema_history", "spring_session", "spring_session_attributes");

    private static final String[] TABLES = {"TABLE", "BASE TABLE"};

    private StoreTables() {}

    /** All tables, each after those that it refers to. */
    static List<StoredTable> of(Connection connection) throws SQLException {
        Map<String, StoredTable> tables = new TreeMap<>();
        for (String name : names(connection)) {
            tables.put(name, table(connection, name));
        }
        return inOrder(tables, references(connection, tables.keySet()));
    }

    private static List<String> names(Connection connection) throws SQLException {
        List<String> names = new ArrayList<>();
        DatabaseMetaData data = connection.getMetaData();
        try (ResultSet found = data.getTables(connection.getCatalog(), connection.getSchema(), "%", TABLES)) {
            while (found.next()) {
                String name = found.getString("TABLE_NAME");
                if (!LEFT_OUT.contains(StoredTable.key(name))) {
                    names.add(name);
                }
            }
        }
        return names;
    }

    private static StoredTable table(Connection connection, String name) throws SQLException {
        return new StoredTable(name, columns(connection, name), keyColumns(connection, name));
    }

    private static List<Column> columns(Connection connection, String table) throws SQLException {
        List<Column> columns = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet none =
                        statement.executeQuery("SELECT * FROM " + StoredTable.quoted(table) + " WHERE 1 = 0")) {
            ResultSetMetaData data = none.getMetaData();
            for (int i = 1; i <= data.getColumnCount(); i++) {
                String name = data.getColumnName(i);
                columns.add(new Column(
                        name, ColumnKind.of(data.getColumnType(i), data.getColumnTypeName(i), table + "." + name)));
            }
        }
        columns.sort(Comparator.comparing(column -> StoredTable.key(column.name())));
        return columns;
    }

    private static List<String> keyColumns(Connection connection, String table) throws SQLException {
        Map<Short, String> columns = new TreeMap<>();
        DatabaseMetaData data = connection.getMetaData();
        try (ResultSet found = data.getPrimaryKeys(connection.getCatalog(), connection.getSchema(), table)) {
            while (found.next()) {
                columns.put(found.getShort("KEY_SEQ"), found.getString("COLUMN_NAME"));
            }
        }
        return List.copyOf(columns.values());
    }

    /** For each table the others that it refers to. */
    private static Map<String, Set<String>> references(Connection connection, Set<String> tables) throws SQLException {
        Map<String, Set<String>> references = new TreeMap<>();
        DatabaseMetaData data = connection.getMetaData();
        for (String table : tables) {
            Set<String> referred = new TreeSet<>();
            try (ResultSet found = data.getImportedKeys(connection.getCatalog(), connection.getSchema(), table)) {
                while (found.next()) {
                    referred.add(found.getString("PKTABLE_NAME"));
                }
            }
            referred.remove(table);
            references.put(table, referred);
        }
        return references;
    }

    private static List<StoredTable> inOrder(Map<String, StoredTable> tables, Map<String, Set<String>> references) {
        List<StoredTable> ordered = new ArrayList<>();
        Set<String> left = new TreeSet<>(tables.keySet());
        while (!left.isEmpty()) {
            List<String> next = left.stream()
                    .filter(table ->
                            references.getOrDefault(table, Set.of()).stream().noneMatch(left::contains))
                    .toList();
            if (next.isEmpty()) {
                throw new IllegalStateException("The tables " + left + " refer to each other in a circle.");
            }
            next.forEach(table -> ordered.add(tables.get(table)));
            next.forEach(left::remove);
        }
        return ordered;
    }
}
