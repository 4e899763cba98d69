package studio.stancebook.activity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.Crowd.Sent;
import studio.stancebook.activity.Writer.Answer;
import studio.stancebook.activity.internal.StoredLines;
import studio.stancebook.band.AppliedBand;
import studio.stancebook.band.Assessor;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.Subject;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.statistics.BandCalculator;
import studio.stancebook.statistics.BandEdges;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.SortedColumn;

/** Fifty programs write to the same packages, bands and proposals at once. */
abstract class FiftyWritersTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Bands bands;

    @Autowired
    Proposals proposals;

    @Autowired
    ClassSnapshots classes;

    @Autowired
    StudioMeasures measures;

    @Autowired
    ActivityRecord activity;

    @Autowired
    StoredLines stored;

    @Autowired
    JdbcClient database;

    private SignedIn lead;
    private Writer writer;
    private Crowd crowd;

    @BeforeEach
    void gather() throws Exception {
        lead = studio.person(Role.LEAD);
        writer = new Writer(studio.address(), studio.token(Role.LEAD));
        crowd = new Crowd(writer);
    }

    @AfterEach
    void sendHome() {
        crowd.close();
    }

    @Test
    void loseNothingAndLeaveEverythingAsIfTheyHadComeOneByOne() throws Exception {
        long linesBefore = stored.head().lineCount();

        List<Sent> sent = crowd.write();

        for (int i = 0; i < Crowd.THINGS; i++) {
            assertPackageHasEveryChange(i, sent);
            assertBandHasEveryVersion(i, sent);
            assertSketchHasEveryRevision(i, sent);
        }
        assertClassesAreThoseOfTheirPackages(sent);
        assertBandsAreThoseOfTheirClass();
        assertVerdictsAreThoseOfTheirBands();
        assertThat(stored.head().lineCount() - linesBefore)
                .isEqualTo(sent.stream().filter(Sent::done).count());
        assertThat(activity.verify().finding()).startsWith("The activity record is whole");
    }

    private void assertPackageHasEveryChange(int i, List<Sent> sent) throws Exception {
        Map<Long, Integer> done = Crowd.done(crowd.packagePath(i), sent, 0);
        Answer now = writer.get(crowd.packagePath(i));

        assertThat(now.version()).isEqualTo(done.size());
        assertThat(now.json().at("/dimensions/wheelbase").asInt()).isEqualTo(done.get(now.version()));
        List<ActivityLine> lines = activity.list(
                        new ActivityFilter(null, "package", String.valueOf(crowd.packages.get(i)), null, null),
                        PageRequest.of(0, 500))
                .getContent();
        assertThat(lines).hasSize(done.size() + 1);
        for (int n = 0; n < done.size(); n++) {
            int wheelbase = done.get((long) done.size() - n);
            assertThat(lines.get(n).changes())
                    .filteredOn(change -> change.field().equals("wheelbase"))
                    .allMatch(change -> String.valueOf(wheelbase).equals(change.to()));
        }
    }

    private void assertBandHasEveryVersion(int i, List<Sent> sent) {
        Map<Long, Integer> done = Crowd.done(crowd.bandPath(i), sent, 1);
        List<Band> history = bands.history(crowd.growing, Crowd.BANDED.get(i));

        assertThat(history).hasSize(done.size() + 1);
        history.stream()
                .filter(band -> band.version() > 1)
                .forEach(band -> assertThat(band.setting().method())
                        .isEqualTo(new BandMethod.Robust(Crowd.k(done.get((long) band.version())))));
    }

    private void assertSketchHasEveryRevision(int i, List<Sent> sent) throws Exception {
        Map<Long, Integer> done = Crowd.done(
                crowd.sketchPath(i),
                sent,
                proposals.get(crowd.sketches.get(i), lead).version()
                        - sent.stream()
                                .filter(one -> one.path().equals(crowd.sketchPath(i)) && one.done())
                                .count());
        ProposalView now = proposals.get(crowd.sketches.get(i), lead);

        assertThat(now.newest().number()).isEqualTo(done.size() + 1);
        long first = now.version() - done.size();
        for (int number = 2; number <= now.newest().number(); number++) {
            Answer revision = writer.get(crowd.sketchPath(i) + "/revisions/" + number);
            assertThat(revision.json().at("/dimensions/wheelbase").asInt()).isEqualTo(done.get(first + number - 1));
        }
    }

    /** The values of some packages, from their dimensions alone. */
    private SortedColumn column(Measure measure, List<Long> ids) {
        return SortedColumn.of(ids.stream()
                .map(id -> measure.of(new Subject(catalogue.get(id).dimensions())))
                .filter(Measured.class::isInstance)
                .mapToDouble(value -> ((Measured) value).value())
                .toArray());
    }

    /** The packages of a segment that took their present form with a revision of the class or before. */
    private List<Long> packagesOf(String segment, long revision) {
        return database.sql("""
                        SELECT p.id FROM benchmark_package p JOIN segment s ON s.id = p.segment_id
                        WHERE s.segment_key = ? AND p.class_revision <= ?""").params(segment, revision).query(Long.class).list();
    }

    private void assertClassesAreThoseOfTheirPackages(List<Sent> sent) {
        long added = sent.stream()
                .filter(one -> one.path().equals(crowd.growing) && one.done())
                .count();
        for (String segment : List.of(crowd.changing, crowd.growing)) {
            ClassSnapshot snapshot = classes.of(segment);
            List<Long> ids = packagesOf(segment, Long.MAX_VALUE);
            assertThat(ids).hasSize(segment.equals(crowd.growing) ? Crowd.THINGS + (int) added : Crowd.THINGS);
            assertThat(snapshot.packages()).isEqualTo(ids.size());
            for (Measure measure : measures.current().all()) {
                assertThat(snapshot.column(measure.key())).as(measure.key()).isEqualTo(column(measure, ids));
            }
        }
    }

    /** Packages are only added there, so what a class was at a revision can be read from the revisions of its rows. */
    private void assertBandsAreThoseOfTheirClass() {
        for (String key : Crowd.BANDED) {
            Measure measure = measures.current().get(key);
            for (Band band : bands.history(crowd.growing, key)) {
                SortedColumn column = column(measure, packagesOf(crowd.growing, band.classRevision()));
                BandEdges edges =
                        (BandEdges) BandCalculator.compute(band.setting().method(), column);
                BandRange range = band.range();
                assertThat(range.limits())
                        .as("%s, version %d", key, band.version())
                        .isEqualTo(edges.interval());
                assertThat(range.n()).isEqualTo(column.n());
            }
        }
    }

    private void assertVerdictsAreThoseOfTheirBands() {
        Assessor assessor = new Assessor(measures.current());
        for (long sketch : crowd.sketches) {
            int newest = proposals.get(sketch, lead).newest().number();
            for (int number = 1; number <= newest; number++) {
                RevisionView revision = proposals.revision(sketch, number, lead);
                Map<String, AppliedBand> applied = new LinkedHashMap<>();
                revision.assessment().findings().stream()
                        .filter(finding -> finding.band() != null)
                        .forEach(finding -> applied.put(
                                finding.measure(),
                                version(finding.measure(), finding.band().version())));
                assertThat(applied).hasSize(Crowd.BANDED.size());
                assertThat(assessor.assess(revision.dimensions(), applied)).isEqualTo(revision.assessment());
            }
        }
    }

    private AppliedBand version(String measure, int version) {
        return bands.history(crowd.growing, measure).stream()
                .filter(band -> band.version() == version)
                .map(Band::applied)
                .findFirst()
                .orElseThrow();
    }
}
