package studio.stancebook.bench;

import java.lang.management.ManagementFactory;
import java.sql.Connection;
import java.util.Map;
import java.util.SplittableRandom;
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
import org.openjdk.jmh.infra.Blackhole;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.bench.BenchStudio.Rows;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.problem.ExpectedVersion;

/**
 * A studio of invented packages with all its classes in memory, every column sorted: the heap that is taken after a garbage
 * collection is printed at the start and after a write to each segment; then one package is edited in the first segment, and
 * the class read again with every figure of every measure. The program's own paths, database included.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1g")
@Warmup(iterations = 10)
@Measurement(iterations = 20)
public class ClassMemoryBenchmark {

    private static final int MADE_BY_THE_SERVER = 5000;
    private static final long REVISION = 9;

    @Param({"postgresql", "h2"})
    public String database;

    @Param("1000000")
    public int packages;

    /** The first segment has half of the packages, the others share the rest; with one, it has all. */
    @Param({"1", "20"})
    public int segments;

    private BenchStudio studio;
    private long edited;
    private int edits;

    @Setup(Level.Trial)
    public void fill() throws Exception {
        studio = BenchStudio.start(database);
        SplittableRandom random = new SplittableRandom(20261129);
        long[] ids = new long[segments];
        for (int i = 0; i < segments; i++) {
            ids[i] = studio.segment("class-" + i);
        }
        studio.bringIn(studio.table("class-0", MADE_BY_THE_SERVER));
        Rows rows = studio.rows("benchmark_package", "segment_id = " + ids[0] + " ORDER BY id");
        edited = (long) rows.value(0, "id");
        for (int part = 1; part < packages / MADE_BY_THE_SERVER; part++) {
            long segment = segments == 1 || part % 2 == 0 ? ids[0] : ids[1 + part / 2 % (segments - 1)];
            try (Connection connection = studio.connection()) {
                Rows others = other(rows, part, random);
                BenchStudio.insert(connection, others, Map.of("segment_id", segment, "class_revision", REVISION), 10_000_000L * part);
                connection.commit();
            }
        }
        // As the server does whenever it adds packages: the classes are others now.
        studio.part(JdbcClient.class)
                .sql("UPDATE segment SET revision = ?")
                .param(REVISION)
                .update();
        read(null);
        print("classes read and sorted");
        edit();
        read(null);
        print("after a write to the first segment");
    }

    /** Rows like these with other numbers and names. */
    private static Rows other(Rows rows, int part, SplittableRandom random) {
        int name = rows.columns().indexOf("name");
        return new Rows(rows.table(), rows.columns(), rows.values().stream().map(row -> {
            Object[] next = row.clone();
            next[name] = row[name] + "/" + part;
            for (int i = 0; i < next.length; i++) {
                if (next[i] instanceof Object[] numbers) {
                    Object[] moved = numbers.clone();
                    for (int k = 0; k < moved.length; k++) {
                        moved[k] = moved[k] == null
                                ? null
                                : ((Number) moved[k]).doubleValue() * (1 + 0.01 * (random.nextDouble() - 0.5));
                    }
                    next[i] = moved;
                }
            }
            return next;
        }).toList());
    }

    private static void print(String when) {
        System.gc();
        long used = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
        System.out.printf("%nHeap, %s: %d MB%n", when, used >> 20);
    }

    private void edit() {
        Catalogue catalogue = studio.part(Catalogue.class);
        PackageView now = catalogue.get(edited);
        PackageDraft draft = new PackageDraft(
                now.name(),
                now.segment(),
                now.modelYear(),
                now.origin(),
                now.dimensions().toBuilder()
                        .set(Dimension.KERB_MASS, 1500 + ++edits % 7)
                        .set(Dimension.SEAT_HEIGHT, 550 + edits % 11)
                        .build());
        catalogue.change(edited, new ExpectedVersion(now.version()), draft, "Benchmark");
    }

    private void read(Blackhole hole) {
        for (ClassSnapshot snapshot : studio.part(ClassSnapshots.class).all().values()) {
            snapshot.measures().forEach(measure -> consume(snapshot.column(measure).summary(), hole));
        }
    }

    private static void consume(Object figure, Blackhole hole) {
        if (hole != null) {
            hole.consume(figure);
        }
    }

    @Setup(Level.Iteration)
    public void editBefore() {
        edit();
    }

    /** What a reader waits for after an edit: the revision, what changed, and every figure of every class. */
    @Benchmark
    public void readAfterEdit(Blackhole hole) {
        read(hole);
    }

    /** The edit itself: closing checks, measures, screening against the class, the record. */
    @Benchmark
    public void oneEdit() {
        edit();
    }

    @TearDown(Level.Trial)
    public void stop() {
        studio.close();
    }
}
