package studio.stancebook.exchange;

import static java.util.concurrent.TimeUnit.MILLISECONDS;
import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import jakarta.persistence.EntityManagerFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.config.AutowireCapableBeanFactory;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.SqlOfThread;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Reading;
import studio.stancebook.exchange.importing.Delivery;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.ImportProgress;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.Importer;
import studio.stancebook.exchange.importing.PackageFile;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.measure.Subject;
import studio.stancebook.problem.ExpectedVersion;

/** What an import does beside others who write at the same time, and what it writes at all. */
abstract class ImportTransactionTest {

    private static final ImportOptions COMMIT = new ImportOptions(false, false, true, Origin.SPECIFICATION);

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    ClassSnapshots snapshots;

    @Autowired
    StudioMeasures measures;

    @Autowired
    Importer importer;

    @Autowired
    AutowireCapableBeanFactory beans;

    @Autowired
    JdbcClient database;

    @Autowired
    EntityManagerFactory factory;

    @TempDir
    Path folder;

    private final ExecutorService others = Executors.newFixedThreadPool(3);
    private final String mark = UUID.randomUUID().toString().substring(0, 8);
    private final String first = "a" + mark;
    private final String second = "b" + mark;

    @AfterEach
    void endOthers() {
        others.shutdownNow();
    }

    private Delivery file(String text) {
        try {
            Path path = Files.writeString(folder.resolve(UUID.randomUUID() + ".csv"), text);
            return new Delivery(PackageFile.of(path, null, null), "cars.csv", new Author(null, "a test"));
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static String rows(String name, String segment, int from, int to) {
        StringBuilder rows = new StringBuilder();
        for (int i = from; i < to; i++) {
            rows.append(name + i + "," + segment + "," + (2500 + i % 400) + "," + (1400 + i % 97) + ",\n");
        }
        return rows.toString();
    }

    private static String heading() {
        return "name,segment,wheelbase [mm],overallHeight [mm],setAside\n";
    }

    private <T> T elsewhere(Callable<T> work) {
        try {
            return others.submit(work).get(20, SECONDS);
        } catch (Exception failure) {
            throw new IllegalStateException(failure);
        }
    }

    private StudioRatio ratio(String key) {
        return new StudioRatio(key, "Height to wheelbase", List.of(Reading.OVERALL_HEIGHT), List.of(Reading.WHEELBASE));
    }

    private Integer layouts() {
        return database.sql("SELECT COUNT(DISTINCT measure_layout) FROM benchmark_package WHERE segment_id ="
                        + " (SELECT id FROM segment WHERE segment_key = ?)")
                .param(first)
                .query(Integer.class)
                .single();
    }

    /** 500 rows are written at a time: the ratio is there for the second part alone, or from the second part on. */
    @Test
    void measuresAnewWhatAnImportWroteByAnotherListOfMeasures() {
        String comesAndGoes = "ratio-goes-" + mark;
        String comes = "ratio-comes-" + mark;
        AtomicInteger parts = new AtomicInteger();

        importer.run(file(heading() + rows("n", first, 0, 1600)), COMMIT, share -> {
            switch (parts.incrementAndGet()) {
                case 1 -> elsewhere(() -> measures.add(ratio(comesAndGoes), new Author(null, "Lead")));
                case 2 ->
                    elsewhere(() -> {
                        measures.remove(comesAndGoes);
                        return measures.add(ratio(comes), new Author(null, "Lead"));
                    });
                default -> {}
            }
        });

        try {
            await().atMost(Duration.ofSeconds(30)).until(() -> layouts() == 1);
            assertThat(database.sql("SELECT measure_layout FROM benchmark_package WHERE segment_id ="
                                    + " (SELECT id FROM segment WHERE segment_key = ?) FETCH FIRST 1 ROWS ONLY")
                            .param(first)
                            .query(String.class)
                            .single())
                    .isEqualTo(layoutOf(catalogue
                            .add(draft(first, "After it"), new Author(null, "Lead"))
                            .id()));
            assertThat(snapshots.of(first).column(comes).n()).isEqualTo(1601);
            assertSortedBy(comes);
        } finally {
            measures.remove(comes);
        }
        assertSortedBy("wheelbase-in-wheels");
    }

    private void assertSortedBy(String measure) {
        List<PackageSummary> sorted = catalogue
                .search(CatalogueFilter.ofSegment(first), PageRequest.of(0, 200, Sort.by(measure)))
                .getContent();
        assertThat(sorted)
                .extracting(one -> catalogueValue(one, measure))
                .isSortedAccordingTo(Double::compare)
                .isNotEmpty();
    }

    private double catalogueValue(PackageSummary one, String measure) {
        return measures.current().get(measure).of(new Subject(one.dimensions().get())) instanceof Measured measured
                ? measured.value()
                : Double.POSITIVE_INFINITY;
    }

    private String layoutOf(long id) {
        return database.sql("SELECT measure_layout FROM benchmark_package WHERE id = ?")
                .param(id)
                .query(String.class)
                .single();
    }

    private static PackageDraft draft(String segment, String name) {
        return new PackageDraft(
                name,
                segment,
                null,
                Origin.DRAWING,
                DimensionSet.builder()
                        .origin(Origin.DRAWING)
                        .set(Dimension.WHEELBASE, 2700)
                        .set(Dimension.OVERALL_HEIGHT, 1400)
                        .build());
    }

    private void makeBoth() {
        segments.create(first, first, "");
        segments.create(second, second, "");
    }

    private boolean locked(String segment) {
        return elsewhere(() -> database.sql("SELECT id FROM segment WHERE segment_key = ? FOR UPDATE SKIP LOCKED")
                .param(segment)
                .query(Long.class)
                .list()
                .isEmpty());
    }

    @Test
    void locksEverySegmentOfTheFileBeforeTheFirstRowSoThatAMoveBetweenThemWaits() throws Exception {
        makeBoth();
        long moved =
                catalogue.add(draft(first, "Moved"), new Author(null, "Lead")).id();
        List<Boolean> lockedAtFirst = new ArrayList<>();
        List<Future<?>> moves = new ArrayList<>();
        String inFileOrder = rows("n", second, 0, 600) + rows("m", first, 0, 600);

        ImportReport report = importer.run(file(heading() + inFileOrder), COMMIT, share -> {
            if (moves.isEmpty()) {
                lockedAtFirst.add(locked(first));
                lockedAtFirst.add(locked(second));
                moves.add(others.submit(() -> catalogue.change(
                        moved, new ExpectedVersion(0), draft(second, "Moved"), new Author(null, "Lead"))));
            }
        });
        moves.get(0).get(20, SECONDS);

        assertThat(lockedAtFirst).containsExactly(true, true);
        assertThat(report.imported()).isEqualTo(1200);
        assertThat(catalogue.get(moved).segment()).isEqualTo(second);
    }

    /** A second importer has a turn of its own, as one in another server has. */
    @Test
    void letsTwoServersBringInTheSameSegmentsInOppositeOrders() throws Exception {
        makeBoth();
        Importer another = beans.createBean(Importer.class);
        CountDownLatch bothBegan = new CountDownLatch(2);

        Future<ImportReport> one = others.submit(() -> importer.run(
                file(heading() + rows("n", first, 0, 600) + rows("m", second, 0, 600)), COMMIT, meeting(bothBegan)));
        Future<ImportReport> two = others.submit(() -> another.run(
                file(heading() + rows("o", second, 0, 600) + rows("p", first, 0, 600)), COMMIT, meeting(bothBegan)));

        assertThat(one.get(60, SECONDS).imported()).isEqualTo(1200);
        assertThat(two.get(60, SECONDS).imported()).isEqualTo(1200);
    }

    private static ImportProgress meeting(CountDownLatch all) {
        return share -> {
            all.countDown();
            try {
                assertThat(all.await(300, MILLISECONDS)).isIn(true, false);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        };
    }

    @Test
    void makesASegmentOnlyForRowsThatComeIn() {
        String refused = "refused" + mark;
        ImportOptions partial = new ImportOptions(false, true, true, Origin.SPECIFICATION);
        ImportOptions dry = new ImportOptions(true, true, true, Origin.SPECIFICATION);
        String text = heading() + "x," + first + ",2500,1400,\nx," + first + ",2600,1400,\n" + "y," + refused
                + ",9,1400,\nz," + refused + ",2600,1400," + "r".repeat(600) + "\n";

        ImportReport announced = importer.run(file(text), dry, share -> {});
        ImportReport done = importer.run(file(text), partial, share -> {});

        assertThat(announced.newSegments()).containsExactly(first);
        assertThat(done.newSegments()).containsExactly(first);
        assertThat(done.rejected()).isEqualTo(3);
        assertThat(segments.exists(first)).isTrue();
        assertThat(segments.exists(refused)).isFalse();
        assertThat(database.sql("SELECT subject FROM activity_line WHERE kind = 'segment' AND subject IN (?, ?)")
                        .params(first, refused)
                        .query(String.class)
                        .list())
                .containsExactly(first);
    }

    /** Values far from their class, equal dimensions, what does not close and what the file asks itself. */
    @Test
    void announcesInADryRunWhatItThenWrites() {
        ImportOptions dry = new ImportOptions(true, false, true, Origin.SPECIFICATION);
        StringBuilder text = new StringBuilder(
                "name,segment,wheelbase [mm],overallLength,frontOverhang,rearOverhang,overallHeight,queries\n");
        IntStream.range(0, 40)
                .forEach(i -> text.append("n" + i + "," + first + "," + (2700 + i) + ",,,," + (1400 + i % 7) + ",\n"));
        text.append("twin," + first + ",2700,,,,1400,\n");
        text.append("far," + first + ",5000,,,,1400,\n");
        text.append("open," + first + ",2720,4000,700,700,1400,Who measured this?\n");

        ImportReport announced = importer.run(file(text.toString()), dry, share -> {});
        assertThat(segments.exists(first)).isFalse();
        ImportReport done = importer.run(file(text.toString()), COMMIT, share -> {});

        assertThat(announced)
                .usingRecursiveComparison()
                .ignoringFields("imported")
                .isEqualTo(done);
        assertThat(announced.imported()).isZero();
        assertThat(done.imported()).isEqualTo(43);
        assertThat(announced.queries()).isEqualTo(stored()).isGreaterThanOrEqualTo(5);
    }

    private int stored() {
        return database.sql("SELECT COUNT(*) FROM package_query q JOIN benchmark_package p ON p.id = q.package_id"
                        + " WHERE p.segment_id = (SELECT id FROM segment WHERE segment_key = ?)")
                .param(first)
                .query(Integer.class)
                .single();
    }

    @Test
    void setsRowsAsideInFewSteps() {
        String text =
                heading() + rows("n", first, 0, 20) + rows("m", first, 20, 420).replace(",\n", ",not ours\n");
        Statistics statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();

        try {
            int before = SqlOfThread.prepared();
            importer.run(file(text), COMMIT, share -> {});
            assertThat(statistics.getFlushCount()).isLessThan(40);
            assertThat(SqlOfThread.prepared() - before).isBetween(1, 100);
        } finally {
            statistics.setStatisticsEnabled(false);
        }
        assertThat(snapshots.of(first).packages()).isEqualTo(20);
        assertThat(segments.get(first).packages()).isEqualTo(420);
        assertThat(catalogue.setAside(first, PageRequest.of(0, 5)))
                .allSatisfy(one -> assertThat(one.reason()).isEqualTo("not ours"));
        assertThat(Collections.frequency(
                        catalogue
                                .search(CatalogueFilter.ofSegment(first), PageRequest.of(0, 500))
                                .map(PackageSummary::setAside)
                                .getContent(),
                        true))
                .isEqualTo(400);
    }
}
