package studio.stancebook.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.ClassFilter;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Stale;
import studio.stancebook.quantity.Interval;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.QuantileType;

/** Bands and their versions, on a class that changes. */
abstract class BandsTest {

    private static final String MEASURE = "wheelbase-in-wheels";
    private static final BandSetting WHOLE_RANGE = BandSetting.of(new BandMethod.Percentile(0, 1, QuantileType.TYPE_7));

    @Autowired
    Bands bands;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("bands");
        segments.create(segment, "Segment of a test", "");
    }

    private void add(double... wheels) {
        for (double count : wheels) {
            catalogue.add(Invented.draft(segment, Invented.name("Invented"), 700 * count), new Author(null, "Tests"));
        }
    }

    private static BandSetting rule(double lower, double upper) {
        return BandSetting.of(new BandMethod.Rule(lower, upper, "Drawn so for years"));
    }

    private Band set(BandSetting setting, int expected) {
        ExpectedVersion version = expected == 0 ? null : new ExpectedVersion(expected);
        return bands.set(segment, MEASURE, setting, "Drawn so for years", version, new Author(null, "Lead"));
    }

    @Test
    void readsBackEveryPartOfAVersion() {
        add(3, 4, 5, 6, 7, 8, 4.5, 5.5, 6.5, 3.5);
        Band set = set(
                new BandSetting(
                        new BandMethod.Percentile(0.2, 0.8, QuantileType.TYPE_8),
                        new ClassFilter(2000, 2030, java.util.Set.of(Origin.SPECIFICATION, Origin.MEASURED))),
                0);

        assertThat(bands.get(segment, MEASURE)).isEqualTo(set);
        assertThat(set.range().lowerInterval()).isNotNull();
        assertThat(set.classRevision()).isEqualTo(segments.get(segment).revision());
    }

    @Test
    void keepsTheOldVersionWhenANewOneIsSet() {
        Band first = set(rule(3, 4), 0);
        Band second = set(rule(3, 5), 1);

        assertThat(bands.history(segment, MEASURE)).containsExactly(second, first);
        assertThat(bands.current(segment)).containsExactly(java.util.Map.entry(MEASURE, second));
        assertThat(bands.applied(segment))
                .containsExactly(java.util.Map.entry(MEASURE, new AppliedBand(2, new Interval(3, 5))));
    }

    @Test
    void computesFromTheFilteredPartOfTheClassOnly() {
        add(3, 4, 5);
        catalogue.add(
                new PackageDraft(
                        "Old one",
                        segment,
                        1990,
                        Origin.SPECIFICATION,
                        Invented.dimensions(6000).build()),
                new Author(null, "Tests"));

        Band whole = set(WHOLE_RANGE, 0);
        Band recent = set(
                new BandSetting(
                        WHOLE_RANGE.method(),
                        new ClassFilter(2010, null, ClassFilter.all().origins())),
                1);

        assertThat(whole.range().n()).isEqualTo(4);
        assertThat(recent.range().n()).isEqualTo(3);
        assertThat(recent.range().limits()).isEqualTo(new Interval(3, 5));
    }

    @Test
    void saysWhatABandWouldBeAndWhomItLeavesOut() {
        add(3, 4, 5, 6, 7);

        BandTrial trial = bands.trial(segment, MEASURE, rule(3.5, 5));

        assertThat(trial.possible()).isTrue();
        assertThat(trial.values()).isEqualTo(5);
        assertThat(trial.below()).isEqualTo(1);
        assertThat(trial.above()).isEqualTo(2);
        assertThat(bands.history(segment, MEASURE)).isEmpty();
    }

    @Test
    void noticesThatTheClassHasMovedTheEdges() {
        add(3, 4, 5);
        Band band = set(WHOLE_RANGE, 0);
        assertThat(bands.trial(segment, MEASURE, band.setting()).differsFrom(band))
                .isFalse();

        add(6);
        BandTrial today = bands.trial(segment, MEASURE, band.setting());

        assertThat(today.differsFrom(band)).isTrue();
        assertThat(today.classRevision()).isGreaterThan(band.classRevision());
        Band again = set(band.setting(), 1);
        assertThat(again.range().limits()).isEqualTo(new Interval(3, 6));
        assertThat(bands.history(segment, MEASURE).get(1)).isEqualTo(band);
    }

    @Test
    void refusesReasonsThatDoNotFit() {
        BandSetting rule = BandSetting.of(new BandMethod.Rule(3, 4, "x".repeat(501)));
        assertThatThrownBy(() -> bands.set(segment, MEASURE, rule, "", null, new Author(null, "Lead")))
                .isInstanceOf(Impossible.class)
                .hasMessageContaining("500");
    }

    @Test
    void keepsTheReasonThatARuleHas() {
        assertThat(bands.set(segment, MEASURE, rule(3, 4), "", null, new Author(null, "Lead"))
                        .reason())
                .isEqualTo("Drawn so for years");
    }

    @Test
    void letsOneOfTwoSettersThroughAndTellsTheOther() throws Exception {
        set(rule(3, 4), 0);
        CyclicBarrier together = new CyclicBarrier(2);
        Callable<Object> setting = () -> {
            together.await();
            try {
                return set(rule(3, 5), 1).version();
            } catch (Stale stale) {
                return "stale";
            }
        };

        ExecutorService people = Executors.newFixedThreadPool(2);
        try {
            List<Future<Object>> answers = people.invokeAll(List.of(setting, setting));
            assertThat(List.of(answers.get(0).get(), answers.get(1).get())).containsExactlyInAnyOrder(2, "stale");
        } finally {
            people.shutdownNow();
        }
        assertThat(bands.history(segment, MEASURE)).hasSize(2);
    }
}
