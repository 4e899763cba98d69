package studio.stancebook.operations.backup;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/** Writes one backup. */
final class BackupWriter {

    static final String DIGEST = "SHA-256";

    private static final JsonMapper JSON = new JsonMapper();
    private static final int ROWS_AT_A_TIME = 500;

    private final OutputStream out;
    private final MessageDigest digest;

    private BackupWriter(OutputStream out) {
        this.out = out;
        this.digest = newDigest();
    }

    /**
     * Writes what the connection sees, which must be one snapshot.
     *
     * @return the number of rows
     */
    static long write(Connection snapshot, Heading heading, OutputStream target) throws SQLException, IOException {
        GZIPOutputStream zipped = new GZIPOutputStream(target, 64 * 1024);
        BackupWriter writer = new BackupWriter(new BufferedOutputStream(zipped, 64 * 1024));
        long rows = writer.writeAll(snapshot, heading);
        writer.out.flush();
        zipped.finish();
        return rows;
    }

    static MessageDigest newDigest() {
        try {
            return MessageDigest.getInstance(DIGEST);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has " + DIGEST, e);
        }
    }

    private long writeAll(Connection snapshot, Heading heading) throws SQLException, IOException {
        line(heading(heading));
        long rows = 0;
        List<StoredTable> tables = StoreTables.of(snapshot);
        for (StoredTable table : tables) {
            rows += writeTable(snapshot, table);
        }
        for (Counter counter : Counters.of(snapshot)) {
            line(counter(counter));
        }
        String sum = HexFormat.of().formatHex(digest.digest());
        line(Map.of(BackupFile.SUM, sum));
        return rows;
    }

    private static Map<String, Object> heading(Heading heading) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put(BackupFile.FORMAT, heading.format());
        line.put("schema", heading.schema());
        line.put("program", heading.program());
        line.put("madeAt", heading.madeAt().toString());
        return line;
    }

    private long writeTable(Connection snapshot, StoredTable table) throws SQLException, IOException {
        Map<String, String> kinds = new LinkedHashMap<>();
        table.columns()
                .forEach(column ->
                        kinds.put(StoredTable.key(column.name()), column.kind().key()));
        Map<String, Object> head = new LinkedHashMap<>();
        head.put(BackupFile.TABLE, table.key());
        head.put("columns", kinds);
        line(head);
        long rows = writeRows(snapshot, table);
        Map<String, Object> end = new LinkedHashMap<>();
        end.put(BackupFile.END, table.key());
        end.put("rows", rows);
        line(end);
        return rows;
    }

    private long writeRows(Connection snapshot, StoredTable table) throws SQLException, IOException {
        long rows = 0;
        try (Statement statement = snapshot.createStatement()) {
            statement.setFetchSize(ROWS_AT_A_TIME);
            try (ResultSet row = statement.executeQuery(table.selectAll())) {
                while (row.next()) {
                    line(values(row, table.columns()));
                    rows++;
                }
            }
        }
        return rows;
    }

    private static @Nullable Object[] values(ResultSet row, List<Column> columns) throws SQLException {
        @Nullable Object[] values = new @Nullable Object[columns.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = columns.get(i).kind().read(row, i + 1);
        }
        return values;
    }

    private static Map<String, Object> counter(Counter counter) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put(BackupFile.COUNTER, StoredTable.key(counter.name()));
        if (counter.column() != null) {
            line.put("column", StoredTable.key(counter.column()));
        }
        line.put("next", counter.next());
        return line;
    }

    private void line(Object content) throws IOException {
        byte[] bytes = JSON.writeValueAsBytes(content);
        out.write(bytes);
        out.write('\n');
        digest.update(bytes);
        digest.update((byte) '\n');
    }
}
