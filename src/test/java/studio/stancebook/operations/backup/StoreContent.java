package studio.stancebook.operations.backup;

import java.math.BigDecimal;
import java.sql.Array;
import java.sql.Blob;
import java.sql.Clob;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;

/**
 * Everything in a database, read by plain queries and not by what makes backups, in words that are the same for H2 and
 * PostgreSQL: for each table its rows, sorted. Without the sessions: after a restore everybody signs in again.
 */
final class StoreContent {

    private StoreContent() {}

    static Map<String, List<String>> of(DataSource store) throws SQLException {
        Map<String, List<String>> content = new TreeMap<>();
        try (Connection connection = store.getConnection()) {
            for (String table : tables(connection)) {
                content.put(table.toLowerCase(Locale.ROOT), rows(connection, table));
            }
        }
        return content;
    }

    static List<String> tables(Connection connection) throws SQLException {
        String query = "SELECT table_name FROM information_schema.tables WHERE table_schema = '"
                + connection.getSchema() + "' AND table_type = 'BASE TABLE' AND LOWER(table_name) NOT IN"
                + " ('flyway_schema_history', 'spring_session', 'spring_session_attributes')";
        List<String> names = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery(query)) {
            while (found.next()) {
                names.add(found.getString(1));
            }
        }
        return names;
    }

    private static List<String> rows(Connection connection, String table) throws SQLException {
        List<String> rows = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT * FROM " + table)) {
            while (row.next()) {
                rows.add(row(row));
            }
        }
        rows.sort(Comparator.naturalOrder());
        return rows;
    }

    private static String row(ResultSet row) throws SQLException {
        Map<String, String> values = new TreeMap<>();
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
            String name = row.getMetaData().getColumnName(i).toLowerCase(Locale.ROOT);
            boolean timed = row.getMetaData()
                    .getColumnTypeName(i)
                    .toLowerCase(Locale.ROOT)
                    .contains("time");
            values.put(name, word(timed ? row.getObject(i, OffsetDateTime.class) : row.getObject(i)));
        }
        return values.toString();
    }

    private static String word(Object value) throws SQLException {
        if (value instanceof OffsetDateTime time) {
            return time.toInstant().toString();
        }
        if (value instanceof Clob text) {
            return text.getSubString(1, (int) text.length());
        }
        if (value instanceof Blob bytes) {
            return HexFormat.of().formatHex(bytes.getBytes(1, (int) bytes.length()));
        }
        if (value instanceof byte[] bytes) {
            return HexFormat.of().formatHex(bytes);
        }
        if (value instanceof BigDecimal number) {
            return number.stripTrailingZeros().toPlainString();
        }
        return value instanceof Array array ? Arrays.toString((Object[]) array.getArray()) : String.valueOf(value);
    }
}
