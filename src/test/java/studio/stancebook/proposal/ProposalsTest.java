package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.AppliedBand;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Assessor;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Variable;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Stale;
import studio.stancebook.statistics.BandMethod;

/** Proposals on a class and bands that change. */
abstract class ProposalsTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    Proposals proposals;

    @Autowired
    Bands bands;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    StudioMeasures measures;

    @Autowired
    StudioClients studio;

    private String segment = "";
    private SignedIn lead;

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("proposals");
        segments.create(segment, "Segment of a test", "");
        lead = studio.person(Role.LEAD);
    }

    private static DimensionSet dimensions(double wheelbase) {
        return Invented.dimensions(wheelbase)
                .uncertainty("wheelbase", 2)
                .uncertainty("frontTyreDiameter", 1)
                .build();
    }

    private ProposalView make(double wheelbase) {
        return proposals.make(new ProposalDraft("Tern", segment, dimensions(wheelbase), ""), lead);
    }

    private ProposalView revise(ProposalView proposal, DimensionSet dimensions) {
        return proposals.revise(proposal.id(), new ExpectedVersion(proposal.version()), dimensions, "", lead);
    }

    private void setBand(String measure, double lower, double upper, long expected) {
        bands.set(
                segment,
                measure,
                BandSetting.of(new BandMethod.Rule(lower, upper, "Of a test")),
                "Of a test",
                expected == 0 ? null : new ExpectedVersion(expected),
                new Author(null, "Lead"));
    }

    private static Verdict.VerdictKind verdict(Assessment assessment) {
        return assessment.find(MEASURE).orElseThrow().kind();
    }

    @Test
    void keepTheAssessmentOfTheBandsOfThatMoment() {
        setBand(MEASURE, 3, 3.5, 0);
        ProposalView made = make(2800);
        setBand(MEASURE, 3, 4.5, 1);

        RevisionView read = proposals.revision(made.id(), 1, lead);

        assertThat(read).isEqualTo(made.newest());
        assertThat(verdict(read.assessment())).isEqualTo(Verdict.VerdictKind.OUTSIDE_HIGH);
        assertThat(verdict(today(made.id()))).isEqualTo(Verdict.VerdictKind.INSIDE);
        assertThat(verdict(revise(made, dimensions(2800)).newest().assessment()))
                .isEqualTo(Verdict.VerdictKind.INSIDE);
    }

    /** What is kept is what the dimensions, the band versions and the registry give again, to the last digit. */
    @Test
    void keepWhatCanBeComputedAgainFromTheBandVersions() {
        for (double wheels : new double[] {3.6, 3.8, 4, 4.1, 4.4}) {
            catalogue.add(Invented.draft(segment, Invented.name("Invented"), 700 * wheels), new Author(null, "Tests"));
        }
        bands.set(segment, MEASURE, BandSetting.of(new BandMethod.Robust(1)), "", null, new Author(null, "Lead"));
        bands.set(
                segment,
                "wheels-spanned",
                BandSetting.of(new BandMethod.Tolerance(0.9, 0.9)),
                "",
                null,
                new Author(null, "Lead"));
        setBand("height-in-wheels", 2.3, 2.5, 0);
        RevisionView revision = make(3150).newest();
        setBand("height-in-wheels", 1, 3, 1);

        Map<String, AppliedBand> applied = new LinkedHashMap<>();
        revision.assessment().findings().stream()
                .filter(finding -> finding.band() != null)
                .forEach(finding -> applied.put(
                        finding.measure(),
                        version(finding.measure(), finding.band().version())));

        assertThat(applied).hasSize(3);
        assertThat(new Assessor(measures.current()).assess(revision.dimensions(), applied))
                .isEqualTo(revision.assessment());
    }

    /** An origin of the whole set says how sure every value is: it must come back with the kept revision. */
    @Test
    void keepTheOriginOfTheWholeSet() {
        setBand(MEASURE, 3, 3.5, 0);
        DimensionSet measured =
                Invented.dimensions(2800).origin(Origin.MEASURED).build();

        ProposalView made = proposals.make(new ProposalDraft("Tern", segment, measured, ""), lead);
        RevisionView kept = made.newest();

        Assessment expected = new Assessor(measures.current()).assess(measured, bands.applied(segment));
        assertThat(kept.assessment()).isEqualTo(expected);
        assertThat(today(made.id()).findings())
                .extracting(Finding::uncertainty)
                .isEqualTo(
                        expected.findings().stream().map(Finding::uncertainty).toList());
        assertThat(kept.dimensions().originOf("wheelbase")).isEqualTo(Origin.MEASURED);
    }

    private AppliedBand version(String measure, int version) {
        return bands.history(segment, measure).stream()
                .filter(band -> band.version() == version)
                .map(Band::applied)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void judgeTheSameDimensionsAnewWhenTheSegmentChanges() {
        String other = Invented.key("proposals");
        segments.create(other, "Other segment", "");
        setBand(MEASURE, 3, 3.5, 0);
        ProposalView made = make(2800);

        ProposalView moved = proposals.change(
                made.id(), new ExpectedVersion(made.version()), new ProposalChange("Tern", other, Stage.DRAFT), lead);

        assertThat(moved.newest().number()).isEqualTo(2);
        assertThat(moved.newest().segment().key()).isEqualTo(other);
        assertThat(moved.newest().dimensions()).isEqualTo(made.newest().dimensions());
        assertThat(moved.newest().note()).isEqualTo("Judged as Other segment from now on.");
        assertThat(verdict(moved.newest().assessment())).isEqualTo(Verdict.VerdictKind.NO_BAND);
        assertThat(proposals.revision(made.id(), 1, lead).segment().key()).isEqualTo(segment);
    }

    @Test
    void markOnlyTheValuesThatARevisionChanges() {
        SignedIn designer = studio.person(Role.DESIGNER);
        ProposalView made = proposals.make(new ProposalDraft("Tern", segment, dimensions(2800), ""), designer);

        ProposalView revised = revise(made, dimensions(2810));

        assertThat(revised.newest().dimensions().recorded().get("wheelbase").by())
                .isEqualTo(lead.name());
        assertThat(revised.newest().dimensions().recorded().get("overallHeight").by())
                .isEqualTo(designer.name());
        assertThat(revised.ownerId()).isEqualTo(designer.personId());
        assertThat(revised.newest().author()).isEqualTo(lead.name());
    }

    @Test
    void countWhatIsOutsideForTheList() {
        setBand(MEASURE, 3, 3.5, 0);
        setBand("height-in-wheels", 2.14, 3, 0);
        ProposalView made = make(2800);

        ProposalSummary listed = proposals
                .list(new ProposalFilter("", segment, null, null), PageRequest.of(0, 10), lead)
                .getContent()
                .get(0);

        assertThat(listed.id()).isEqualTo(made.id());
        assertThat(listed.judged()).isEqualTo(2);
        assertThat(listed.outside()).isEqualTo(1);
        assertThat(listed.tooClose()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"dunlin", "DUNLIN 100% ", "100%", "Grey Dunlin 100% of"})
    void areFoundByPartsOfTheirNames(String part) {
        ProposalView dunlin = proposals.make(draft("Grey dunlin 100% of " + segment), lead);
        proposals.make(draft("Grey egret 1000 of " + segment), lead);

        assertThat(proposals.list(new ProposalFilter(part, segment, null, null), PageRequest.of(0, 10), lead))
                .extracting(ProposalSummary::id)
                .containsExactly(dunlin.id());
    }

    private ProposalDraft draft(String name) {
        return new ProposalDraft(name, segment, dimensions(2800), "");
    }

    @Test
    void letOneOfTwoRevisersThroughAndTellTheOther() throws Exception {
        ProposalView made = make(2800);
        CyclicBarrier together = new CyclicBarrier(2);
        Callable<Object> revising = () -> {
            together.await();
            try {
                return revise(made, made.newest().dimensions().moved(Variable.of(Dimension.WHEELBASE), 10))
                        .newest()
                        .number();
            } catch (Stale stale) {
                return "stale";
            }
        };

        ExecutorService people = Executors.newFixedThreadPool(2);
        try {
            List<Future<Object>> answers = people.invokeAll(List.of(revising, revising));
            assertThat(List.of(answers.get(0).get(), answers.get(1).get())).containsExactlyInAnyOrder(2, "stale");
        } finally {
            people.shutdownNow();
        }
        assertThat(proposals.revisions(made.id(), PageRequest.of(0, 10), lead).getTotalElements())
                .isEqualTo(2);
        assertThat(proposals.get(made.id(), lead).newest().number()).isEqualTo(2);
    }

    private Assessment today(long id) {
        return proposals.shown(proposals.state(id, null, lead), 1).today();
    }
}
