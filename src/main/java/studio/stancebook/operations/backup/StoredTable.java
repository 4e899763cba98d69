package studio.stancebook.operations.backup;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A table of the store.
 *
 * @param name as the database spells it
 * @param columns in the order of their names, which is the same on every database
 * @param keyColumns of the primary key, as the database spells them; rows are read in their order
 */
record StoredTable(String name, List<Column> columns, List<String> keyColumns) {

    StoredTable {
        columns = List.copyOf(columns);
        keyColumns = List.copyOf(keyColumns);
    }

    /** The name as every database would understand it. */
    String key() {
        return key(name);
    }

    static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    String selectAll() {
        String names = columns.stream().map(column -> quoted(column.name())).collect(Collectors.joining(", "));
        String order = keyColumns.stream().map(StoredTable::quoted).collect(Collectors.joining(", "));
        return "SELECT " + names + " FROM " + quoted(name) + (order.isEmpty() ? "" : " ORDER BY " + order);
    }

    String insert() {
        String names = columns.stream().map(column -> quoted(column.name())).collect(Collectors.joining(", "));
        String places = columns.stream().map(column -> "?").collect(Collectors.joining(", "));
        return "INSERT INTO " + quoted(name) + " (" + names + ") VALUES (" + places + ")";
    }

    static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
