package studio.stancebook.operations.backup;

import java.sql.Connection;
import java.sql.JDBCType;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.sql.DataSource;

/**
 * Fills every table of a store, whatever tables there are, with values of every column's type, missing ones included. What
 * they mean does not matter here, so the checks of values and references are taken away before.
 */
final class AnyContent {

    private static final int ROWS = 12;
    private static final String[] WORDS = {
        "",
        " ",
        "plain",
        "quote \" and \\ backslash",
        "line\nand\ttab",
        "Überhang äöü",
        "\u202Eright to left",
        "🚙",
        "null",
        "[1]"
    };

    private final Random random;

    AnyContent(long seed) {
        this.random = new Random(seed);
    }

    void fill(DataSource store) throws SQLException {
        try (Connection connection = store.getConnection()) {
            for (String table : StoreContent.tables(connection)) {
                for (int row = 0; row < ROWS; row++) {
                    insert(connection, table, row);
                }
            }
        }
    }

    static void dropChecks(DataSource store) throws SQLException {
        String query = "SELECT table_name, constraint_name FROM information_schema.table_constraints"
                + " WHERE constraint_type IN ('CHECK', 'FOREIGN KEY')"
                + " AND table_name NOT LIKE 'flyway%' AND constraint_name NOT LIKE '%\\_not\\_null' ESCAPE '\\'";
        List<String> drops = new ArrayList<>();
        try (Connection connection = store.getConnection();
                Statement statement = connection.createStatement()) {
            try (ResultSet found =
                    statement.executeQuery(query + " AND table_schema = '" + connection.getSchema() + "'")) {
                while (found.next()) {
                    drops.add("ALTER TABLE " + found.getString(1) + " DROP CONSTRAINT " + found.getString(2));
                }
            }
            for (String drop : drops) {
                statement.execute(drop);
            }
        }
    }

    private void insert(Connection connection, String table, int row) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet none = statement.executeQuery("SELECT * FROM " + table + " WHERE 1 = 0")) {
            ResultSetMetaData columns = none.getMetaData();
            String places = IntStream.rangeClosed(1, columns.getColumnCount())
                    .mapToObj(i -> "?")
                    .collect(Collectors.joining(", "));
            try (PreparedStatement insert =
                    connection.prepareStatement("INSERT INTO " + table + " VALUES (" + places + ")")) {
                for (int i = 1; i <= columns.getColumnCount(); i++) {
                    boolean missing = columns.isNullable(i) == ResultSetMetaData.columnNullable && row % 3 == 2;
                    insert.setObject(i, missing ? null : value(connection, columns, i, row));
                }
                insert.executeUpdate();
            }
        }
    }

    /** A value of the column's type that no other row has, so that whatever must be unique is. */
    private Object value(Connection connection, ResultSetMetaData columns, int i, int row) throws SQLException {
        String type = columns.getColumnTypeName(i).toLowerCase(java.util.Locale.ROOT);
        return switch (type) {
            case "bigint", "int8", "bigserial" -> row + 50L * random.nextInt(1_000_000_000);
            case "integer", "int4", "smallint", "int2" -> row + 50 * random.nextInt(600);
            case "double precision", "float8" -> number(row);
            case "boolean", "bool" -> random.nextBoolean();
            case "timestamp with time zone", "timestamptz" ->
                Instant.ofEpochSecond(random.nextInt(), 1000L * random.nextInt(1_000_000))
                        .atOffset(ZoneOffset.ofHours(row));
            case "date" -> LocalDate.ofEpochDay(random.nextInt(40_000));
            case "uuid" -> new UUID(random.nextLong(), random.nextLong());
            case "double precision array", "_float8" ->
                connection.createArrayOf("float8", new Object[] {number(row), null, number(row + 1)});
            case "character varying", "varchar", "character large object", "text", "character", "bpchar" ->
                text(row, columns.getPrecision(i));
            case "binary large object", "bytea", "binary varying" -> bytes();
            default ->
                throw new IllegalStateException("No value for " + columns.getColumnName(i) + " of type " + type + " ("
                        + JDBCType.valueOf(columns.getColumnType(i)) + "): name one here.");
        };
    }

    private double number(int row) {
        // No negative zero: H2 itself keeps it as zero.
        double[] special = {-0.1, 0.1 + 0.2, Double.MIN_VALUE, Double.MAX_VALUE, Double.POSITIVE_INFINITY, 1e-7};
        return row < special.length ? special[row] : random.nextGaussian() * 1000;
    }

    private String text(int row, int longest) {
        String text = WORDS[row % WORDS.length] + row;
        return text.length() <= longest ? text : text.substring(text.length() - longest);
    }

    private byte[] bytes() {
        byte[] bytes = new byte[300];
        random.nextBytes(bytes);
        return bytes;
    }
}
