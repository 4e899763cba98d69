package studio.stancebook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import studio.stancebook.bench.BenchStudio.Rows;

/**
 * A table of invented packages brought in by the server, from the file to the commit, screening included; and the rows that
 * came of it inserted into the same tables of the same database by plain JDBC in batches of 500, one commit.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx2g")
@Warmup(iterations = 2)
@Measurement(iterations = 3)
public class ImportBenchmark {

    @Param({"h2", "postgresql"})
    public String database;

    @Param("20000")
    public int rows;

    private BenchStudio studio;
    private Rows packages;
    private Rows queries;
    private long segmentId;
    private Path table;
    private int segments;
    private long nextId = 1_000_000_000L;

    @Setup(Level.Trial)
    public void start() throws Exception {
        studio = BenchStudio.start(database);
        prepare();
        ours();
        packages = studio.rows("benchmark_package", "segment_id = " + segmentId + " ORDER BY id");
        queries = studio.rows("package_query", "open_in = " + segmentId + " ORDER BY id");
    }

    /** A segment without packages, and a table for it. */
    @Setup(Level.Iteration)
    public void prepare() throws IOException {
        String segment = "benchmark-" + ++segments;
        segmentId = studio.segment(segment);
        table = studio.table(segment, rows);
    }

    @TearDown(Level.Trial)
    public void stop() {
        studio.close();
    }

    @Benchmark
    public Object ours() throws IOException {
        return studio.bringIn(table);
    }

    @Benchmark
    public void plainJdbc() throws SQLException {
        long shift = nextId - (long) packages.value(0, "id");
        nextId += 10L * rows;
        try (Connection connection = studio.connection()) {
            BenchStudio.insert(connection, packages, Map.of("segment_id", segmentId), shift);
            BenchStudio.insert(connection, queries, Map.of("open_in", segmentId), shift);
            connection.commit();
        }
    }
}
