package studio.stancebook.bench;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.duckdb.DuckDBAppender;
import org.duckdb.DuckDBConnection;
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
import org.openjdk.jmh.infra.Blackhole;
import studio.stancebook.statistics.SortedColumn;
import studio.stancebook.statistics.Summary;

/**
 * Every figure of every measure of one class, from values in memory: ours, and DuckDB's moments, quantiles and MAD over the
 * same values in the same run. Also one edit: every column less one value and plus another, then every figure.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 3,
        jvmArgs = {"-Xmx6g", "-XX:+IgnoreUnrecognizedVMOptions", "-XX:+UseTransparentHugePages"})
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class ClassStatisticsBenchmark {

    private static final int MEASURES = 38;

    @Param({"100000", "1000000"})
    public int packages;

    private double[][] values;
    private SortedColumn[] columns;
    private Connection duckDb;
    private String query;

    @Setup(Level.Trial)
    public void fill() throws SQLException {
        SplittableRandom random = new SplittableRandom(20260101);
        values = new double[MEASURES][packages];
        for (double[] column : values) {
            double centre = 1 + random.nextDouble() * 4;
            for (int i = 0; i < packages; i++) {
                column[i] = centre + (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 0.3;
            }
        }
        columns = IntStream.range(0, MEASURES)
                .mapToObj(m -> SortedColumn.of(values[m]))
                .toArray(SortedColumn[]::new);
        fillPeer();
    }

    private void fillPeer() throws SQLException {
        duckDb = DriverManager.getConnection("jdbc:duckdb:");
        StringBuilder table = new StringBuilder("create table package (");
        StringBuilder select = new StringBuilder("select ");
        for (int m = 0; m < MEASURES; m++) {
            String c = "m" + m;
            table.append(m == 0 ? "" : ", ").append(c).append(" double");
            select.append(m == 0 ? "" : ", ")
                    .append("count(%s), avg(%s), stddev_samp(%s), min(%s), max(%s),".formatted(c, c, c, c, c))
                    .append(" quantile_cont(%s, [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95]), mad(%s)".formatted(c, c));
        }
        try (Statement statement = duckDb.createStatement()) {
            statement.execute(table.append(")").toString());
        }
        query = select.append(" from package").toString();
        try (DuckDBAppender appender = duckDb.unwrap(DuckDBConnection.class).createAppender("main", "package")) {
            for (int i = 0; i < packages; i++) {
                appender.beginRow();
                for (double[] column : values) {
                    appender.append(column[i]);
                }
                appender.endRow();
            }
        }
    }

    @TearDown(Level.Trial)
    public void close() throws SQLException {
        duckDb.close();
    }

    /** Sorts and summarises every column, on all processors as the server would. */
    @Benchmark
    public Summary[] ours() {
        return IntStream.range(0, MEASURES)
                .parallel()
                .mapToObj(m -> SortedColumn.of(values[m]).summary())
                .toArray(Summary[]::new);
    }

    @Benchmark
    public void duckDb(Blackhole hole) throws SQLException {
        try (Statement statement = duckDb.createStatement();
                ResultSet result = statement.executeQuery(query)) {
            result.next();
            for (int i = 1; i <= MEASURES * 7; i++) {
                hole.consume(result.getObject(i));
            }
        }
    }

    /** One package edited: what a reader right after it waits for, statistics alone. */
    @Benchmark
    public Summary[] oursAfterOneEdit() {
        Summary[] summaries = new Summary[MEASURES];
        for (int m = 0; m < MEASURES; m++) {
            summaries[m] =
                    columns[m].exchanged(values[m][7], values[m][7] + 0.01).summary();
        }
        return summaries;
    }
}
