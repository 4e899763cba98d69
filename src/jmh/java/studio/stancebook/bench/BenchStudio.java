package studio.stancebook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import javax.sql.DataSource;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import studio.stancebook.PostgresDatabase;
import studio.stancebook.Stancebook;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.importing.Delivery;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.Importer;
import studio.stancebook.exchange.importing.PackageFile;

/** A server in this process over a new database, a way to bring in invented packages, and one past it by plain JDBC. */
final class BenchStudio implements AutoCloseable {

    private static final int AT_ONCE = 500;
    private static final ImportOptions OPTIONS = new ImportOptions(false, false, false, Origin.SPECIFICATION);
    private static final double[] MIDDLES = {2820, 880, 1060, 1860, 1480, 1590, 1590, 150, 560, 1650};

    private final Path folder;
    private final ConfigurableApplicationContext server;

    private BenchStudio(Path folder, ConfigurableApplicationContext server) {
        this.folder = folder;
        this.server = server;
    }

    /** @param database h2, in a file, or postgresql */
    static BenchStudio start(String database) throws IOException {
        Path folder = Files.createTempDirectory("stancebook-bench");
        SpringApplicationBuilder server = new SpringApplicationBuilder(Stancebook.class);
        if (database.equals("postgresql")) {
            server.initializers(new PostgresDatabase());
        }
        return new BenchStudio(
                folder, server.run("--server.port=0", "--stancebook.data=" + folder, "--logging.level.root=WARN"));
    }

    <T> T part(Class<T> kind) {
        return server.getBean(kind);
    }

    /** Makes a segment and gives its id. */
    long segment(String key) {
        return part(Segments.class).create(key, "Segment of a benchmark", "").id();
    }

    /** A table of invented packages of a segment: 14 columns. */
    Path table(String segment, int rows) throws IOException {
        SplittableRandom random = new SplittableRandom(20261129);
        StringBuilder text = new StringBuilder("name,segment,model year,tyre,wheelbase,front overhang,rear overhang,"
                + "overall width,overall height,front track,rear track,ground clearance,seat height,kerb mass\n");
        for (int i = 0; i < rows; i++) {
            text.append("Invented %d,%s,%d,225/45R18".formatted(i, segment, 2000 + random.nextInt(27)));
            for (double middle : MIDDLES) {
                double spread = random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5;
                text.append(String.format(Locale.ROOT, ",%.1f", middle * (1 + 0.05 * spread)));
            }
            text.append('\n');
        }
        return Files.writeString(folder.resolve(segment + ".csv"), text);
    }

    /** Brings a table in as the API does. */
    Object bringIn(Path table) throws IOException {
        return part(Importer.class)
                .run(new Delivery(PackageFile.of(table, null, null), "table.csv", new Author(null, "Benchmark")), OPTIONS, share -> {});
    }

    /** Rows of a table as the driver gives them. */
    record Rows(String table, List<String> columns, List<Object[]> values) {

        Object value(int row, String column) {
            return values.get(row)[columns.indexOf(column)];
        }
    }

    Rows rows(String table, String where) throws SQLException {
        try (Connection connection = connection();
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("SELECT * FROM " + table + " WHERE " + where)) {
            List<String> columns = new ArrayList<>();
            for (int i = 1; i <= result.getMetaData().getColumnCount(); i++) {
                columns.add(result.getMetaData().getColumnName(i).toLowerCase(Locale.ROOT));
            }
            List<Object[]> values = new ArrayList<>();
            while (result.next()) {
                Object[] row = new Object[columns.size()];
                for (int i = 0; i < row.length; i++) {
                    Object value = result.getObject(i + 1);
                    row[i] = value instanceof Array array ? array.getArray() : value;
                }
                values.add(row);
            }
            return new Rows(table, columns, values);
        }
    }

    /**
     * Inserts rows in batches, with ids moved on.
     *
     * @param fixed values by column that stand for those of the rows
     */
    static void insert(Connection connection, Rows rows, Map<String, Object> fixed, long shift) throws SQLException {
        String places = String.join(",", Collections.nCopies(rows.columns().size(), "?"));
        try (PreparedStatement statement = connection.prepareStatement("INSERT INTO " + rows.table() + " ("
                + String.join(",", rows.columns()) + ") VALUES (" + places + ")")) {
            int waiting = 0;
            for (Object[] row : rows.values()) {
                for (int i = 0; i < row.length; i++) {
                    String column = rows.columns().get(i);
                    statement.setObject(i + 1, written(connection, fixed.getOrDefault(column, row[i]), column, shift));
                }
                statement.addBatch();
                if (++waiting % AT_ONCE == 0) {
                    statement.executeBatch();
                }
            }
            statement.executeBatch();
        }
    }

    private static Object written(Connection connection, Object value, String column, long shift) throws SQLException {
        if (column.equals("id") || column.equals("package_id")) {
            return (long) value + shift;
        }
        return value instanceof Object[] array ? connection.createArrayOf("float8", array) : value;
    }

    /** A connection whose changes wait for a commit. */
    Connection connection() throws SQLException {
        Connection connection = part(DataSource.class).getConnection();
        connection.setAutoCommit(false);
        return connection;
    }

    @Override
    public void close() {
        server.close();
    }
}
