package studio.stancebook.operations.backup;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads one backup: first whole, to know that it is sound; then row by row. */
public final class BackupFile {

    static final String FORMAT = "stancebookBackup";
    static final String TABLE = "table";
    static final String END = "end";
    static final String COUNTER = "counter";
    static final String SUM = "sha256";

    private static final JsonMapper JSON = new JsonMapper();
    private static final int LONGEST_LINE = 64 * 1024 * 1024;

    private final Path path;
    private final Heading heading;
    private final List<Counter> counters;
    private final long rows;

    private BackupFile(Path path, Heading heading, List<Counter> counters, long rows) {
        this.path = path;
        this.heading = heading;
        this.counters = List.copyOf(counters);
        this.rows = rows;
    }

    /** What is done with the content. */
    interface Reader {

        /** @param kinds of the columns by their names, in the order of the values in each row */
        void table(String name, Map<String, ColumnKind> kinds) throws SQLException;

        void row(JsonNode values) throws SQLException;

        void end() throws SQLException;
    }

    /** A reader that looks at nothing. */
    private static final Reader NOBODY = new Reader() {
        @Override
        public void table(String name, Map<String, ColumnKind> kinds) {}

        @Override
        public void row(JsonNode values) {}

        @Override
        public void end() {}
    };

    /**
     * Reads a file to its end and compares the checksum.
     *
     * @throws DamagedBackup if it is not what was written
     */
    public static BackupFile check(Path path) throws IOException {
        try {
            return new Pass(path).run(NOBODY);
        } catch (SQLException cannotBe) {
            throw new IllegalStateException(cannotBe);
        }
    }

    public Heading heading() {
        return heading;
    }

    List<Counter> counters() {
        return counters;
    }

    /** The rows of all tables. */
    public long rows() {
        return rows;
    }

    /** Reads it again for somebody. */
    void read(Reader reader) throws IOException, SQLException {
        new Pass(path).run(reader);
    }

    /** One reading from beginning to end. */
    private static final class Pass {

        private final Path path;
        private final MessageDigest digest = BackupWriter.newDigest();
        private final List<Counter> counters = new ArrayList<>();
        private @Nullable String open;
        private int width;
        private long inTable;
        private long rows;

        Pass(Path path) {
            this.path = path;
        }

        BackupFile run(Reader reader) throws IOException, SQLException {
            try (InputStream in =
                    new BufferedInputStream(new GZIPInputStream(Files.newInputStream(path), 64 * 1024), 64 * 1024)) {
                Heading heading = heading(json(line(in)));
                for (JsonNode next = json(line(in)); !next.has(SUM); next = json(line(in))) {
                    part(next, reader);
                }
                if (in.read() >= 0) {
                    throw new DamagedBackup("there is more in it after its end");
                }
                return new BackupFile(path, heading, counters, rows);
            } catch (java.util.zip.ZipException | java.io.EOFException e) {
                throw new DamagedBackup("it is cut off or was changed since it was written", e);
            } catch (DamagedBackup e) {
                throw e;
            } catch (RuntimeException e) {
                throw new DamagedBackup("it has a line that cannot be read", e);
            }
        }

        private byte[] line(InputStream in) throws IOException {
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            int next = in.read();
            while (next != '\n') {
                if (next < 0 || line.size() > LONGEST_LINE) {
                    throw new DamagedBackup("it is cut off or was changed since it was written");
                }
                line.write(next);
                next = in.read();
            }
            return line.toByteArray();
        }

        /** The content of a line; that of the last one is compared with what came before. */
        private JsonNode json(byte[] line) {
            JsonNode content = JSON.readTree(line);
            if (content.has(SUM)) {
                String sum = HexFormat.of().formatHex(digest.digest());
                if (!sum.equals(content.get(SUM).asString())) {
                    throw new DamagedBackup("its checksum is not that of its content");
                }
            }
            digest.update(line);
            digest.update((byte) '\n');
            return content;
        }

        private static Heading heading(JsonNode line) {
            if (!line.has(FORMAT)) {
                throw new DamagedBackup("it is no backup of a studio");
            }
            int format = line.get(FORMAT).asInt();
            if (format != Heading.FORMAT) {
                throw new DamagedBackup("it has format " + format + ", and this program reads " + Heading.FORMAT);
            }
            return new Heading(
                    format,
                    line.get("schema").asString(),
                    line.get("program").asString(),
                    Instant.parse(line.get("madeAt").asString()));
        }

        private void part(JsonNode line, Reader reader) throws SQLException {
            if (line.isArray()) {
                row(line, reader);
            } else if (line.has(TABLE)) {
                begin(line, reader);
            } else if (line.has(END)) {
                end(line, reader);
            } else if (line.has(COUNTER)) {
                counters.add(counter(line));
            } else {
                throw new DamagedBackup("it has a line of an unknown kind");
            }
        }

        private void begin(JsonNode line, Reader reader) throws SQLException {
            Map<String, ColumnKind> kinds = new LinkedHashMap<>();
            line.get("columns")
                    .properties()
                    .forEach(column ->
                            kinds.put(column.getKey(), kind(column.getValue().asString())));
            open = line.get(TABLE).asString();
            width = kinds.size();
            inTable = 0;
            reader.table(open, kinds);
        }

        private static ColumnKind kind(String key) {
            return ColumnKind.ofKey(key)
                    .orElseThrow(() -> new DamagedBackup("it has columns of an unknown kind, " + key));
        }

        private void row(JsonNode line, Reader reader) throws SQLException {
            if (open == null || line.size() != width) {
                throw new DamagedBackup("it has a row that belongs to no table");
            }
            reader.row(line);
            inTable++;
            rows++;
        }

        private void end(JsonNode line, Reader reader) throws SQLException {
            if (!line.get(END).asString().equals(open) || line.get("rows").asLong() != inTable) {
                throw new DamagedBackup("rows are missing");
            }
            reader.end();
            open = null;
        }

        private static Counter counter(JsonNode line) {
            return new Counter(
                    line.get(COUNTER).asString(),
                    line.has("column") ? line.get("column").asString() : null,
                    line.get("next").asLong());
        }
    }
}
