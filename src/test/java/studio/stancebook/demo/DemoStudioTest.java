package studio.stancebook.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.data.domain.Pageable;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.TestPropertySource;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.Directory;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Band;
import studio.stancebook.band.Bands;
import studio.stancebook.band.Finding;
import studio.stancebook.band.PracticeBand;
import studio.stancebook.band.PracticeBands;
import studio.stancebook.band.VehicleType;
import studio.stancebook.band.Verdict;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.DimensionChecks;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureChecks;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.Subject;
import studio.stancebook.moves.CarriedMove;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalState;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.proposal.ShownRevision;
import studio.stancebook.proposal.Stage;
import studio.stancebook.quantity.Interval;

@StudioTest
@ActiveProfiles("demo")
@TestPropertySource(properties = "stancebook.data=target/demo-test")
class DemoStudioTest {

    @Autowired
    private Segments segments;

    @Autowired
    private Catalogue catalogue;

    @Autowired
    private Bands bands;

    @Autowired
    private Proposals proposals;

    @Autowired
    private Directory directory;

    @Autowired
    private StudioMeasures registry;

    @Autowired
    private DemoStudio studio;

    private SignedIn lead() {
        return new SignedIn(directory.active(Role.LEAD).get(0).id(), "lead", "", Role.LEAD);
    }

    private ProposalView proposal(String name) {
        return proposals.list(ProposalFilter.all(), Pageable.ofSize(50), lead()).stream()
                .filter(summary -> summary.name().equals(name))
                .findFirst()
                .map(summary -> proposals.get(summary.id(), lead()))
                .orElseThrow();
    }

    private String verdict(String proposal, String measure) {
        return proposal(proposal)
                .newest()
                .assessment()
                .find(measure)
                .orElseThrow()
                .verdict()
                .key();
    }

    @Test
    void hasItsSegmentsPackagesAndProposals() {
        assertEquals(8, segments.all().size());
        assertTrue(catalogue.search(CatalogueFilter.all(), Pageable.ofSize(1)).getTotalElements() >= 160);
        assertEquals(
                6,
                proposals
                        .list(ProposalFilter.all(), Pageable.ofSize(50), lead())
                        .getTotalElements());
    }

    @Test
    void saysOfEverySegmentThatItIsInvented() {
        for (SegmentView segment : segments.all()) {
            assertTrue(segment.description().endsWith("Every vehicle in it is invented."), segment.description());
        }
    }

    /** As many as chance brings: of some 9,000 values fewer than one in two hundred. */
    @Test
    void bringsFewQueries() {
        StringBuilder queries = new StringBuilder();
        for (SegmentView segment : segments.all()) {
            catalogue
                    .openQueries(segment, Pageable.ofSize(50))
                    .forEach(query -> queries.append(query.query().question()).append('\n'));
        }
        assertTrue(queries.toString().lines().count() <= 45, queries.toString());
    }

    @Test
    void setsBandsByEveryMethod() {
        Set<String> methods = segments.all().stream()
                .flatMap(segment -> bands.current(segment.key()).values().stream())
                .map(band -> band.setting().method().key())
                .collect(Collectors.toSet());

        assertEquals(Set.of("rule", "percentile", "tolerance", "distribution-free", "robust"), methods);
    }

    /** A crossover with an approach angle of 17 degrees was inside the one and outside the other of two bands of practice. */
    @Test
    void takesItsRulesFromTheReadyMadeBands() {
        Map<String, Band> crossover = bands.current("crossover");
        List<PracticeBand> rules = PracticeBands.of(VehicleType.CROSSOVER).stream()
                .filter(band ->
                        crossover.get(band.measure()).setting().method().key().equals("rule"))
                .toList();

        assertTrue(rules.stream().anyMatch(rule -> rule.measure().equals("approach-angle")));
        rules.forEach(rule -> {
            assertEquals(rule.limits(), crossover.get(rule.measure()).range().limits());
            assertEquals(rule.reason(), crossover.get(rule.measure()).reason());
        });
    }

    @Test
    void ternHasRockerAndScreenOutside() {
        assertEquals("outside-high", verdict("Tern", "rocker-offset-in-wheels"));
        assertEquals("outside-high", verdict("Tern", "screen-aim-in-wheels"));
        assertEquals(Stage.FOR_REVIEW, proposal("Tern").stage());
    }

    @Test
    void dunlinIsTooCloseToCall() {
        assertEquals("too-close", verdict("Dunlin", "wheels-spanned"));
    }

    @Test
    void shelduckIsInsideThroughout() {
        assertEquals("", notInside("Shelduck"));
        assertTrue(proposal("Shelduck").newest().assessment().judged() > 25);
    }

    /** Every judged measure of the newest revision that is not inside. */
    private String notInside(String proposal) {
        return proposal(proposal).newest().assessment().findings().stream()
                .filter(finding -> finding.kind().judged() && finding.kind() != Verdict.VerdictKind.INSIDE)
                .map(Finding::toString)
                .collect(Collectors.joining("\n"));
    }

    @Test
    void whinchatHasFewDimensionsAndTheSketchNoScale() {
        assertTrue(proposal("Whinchat").newest().assessment().judged() < 10);
        assertEquals(
                Scale.UNSCALED,
                proposal("Sanderling sketch").newest().dimensions().scale());
    }

    @Test
    void pintailComesInsideRevisionByRevision() {
        ProposalView pintail = proposal("Pintail");
        int[] outside = proposals.revisions(pintail.id(), Pageable.ofSize(50), lead()).stream()
                .mapToInt(revision -> revision.outside())
                .toArray();

        assertEquals(4, outside.length);
        assertEquals("", notInside("Pintail"));
        assertTrue(outside[3] > outside[1], outside[3] + " " + outside[1]);
    }

    /** What is stored says the same as what was judged. */
    @Test
    void todaysBandsJudgeEveryProposalTheSame() {
        for (String name : List.of("Whinchat", "Sanderling sketch", "Tern", "Dunlin", "Shelduck", "Pintail")) {
            ProposalState state = proposals.state(proposal(name).id(), null, lead());
            ShownRevision newest = proposals.shown(state, 1);

            assertEquals(verdicts(newest.revision().assessment()), verdicts(newest.today()), name);
        }
    }

    private static List<String> verdicts(Assessment assessment) {
        return assessment.findings().stream()
                .map(finding -> finding.measure() + " " + finding.kind().key())
                .toList();
    }

    @Test
    void laterStartsLeaveItAlone() {
        long before = proposals
                .list(ProposalFilter.all(), Pageable.ofSize(50), lead())
                .map(ProposalSummary::id)
                .getTotalElements();

        studio.run(new DefaultApplicationArguments());

        assertEquals(
                before,
                proposals
                        .list(ProposalFilter.all(), Pageable.ofSize(50), lead())
                        .getTotalElements());
        assertEquals(8, segments.all().size());
    }

    /** What a page says would bring a measure to the edge does so when it is done as the page writes it, in whole mm. */
    @Test
    void takesEveryAdviceOfItsProposals() {
        int followed = 0;
        for (ProposalSummary summary : proposals.list(ProposalFilter.all(), Pageable.ofSize(50), lead())) {
            RevisionView revision = proposals.get(summary.id(), lead()).newest();
            for (Finding finding : revision.assessment().findings()) {
                Measure measure = registry.current().get(finding.measure());
                DimensionSet set = revision.dimensions();
                for (CarriedMove move : CarriedMove.of(revision.movesOf(finding.measure()), measure, set)
                        .toList()) {
                    DimensionSet after = move.appliedTo(set, written(move, set));
                    DimensionChecks.requireSound(after, MeasureChecks.disagreements(after));
                    Measured value = (Measured) measure.of(new Subject(after));
                    assertTrue(
                            finding.band() != null && nearlyHolds(finding, value.value()),
                            () -> summary.name() + ": " + finding.measure() + " is " + value.value() + " after " + move
                                    + ", and was " + finding.value());
                    followed++;
                }
            }
        }
        assertTrue(followed >= 15, followed + " pieces of advice");
    }

    /** A twentieth of the way is left to what follows and is rounded. */
    private static boolean nearlyHolds(Finding finding, double value) {
        Interval limits = Objects.requireNonNull(finding.band()).limits();
        double was = Objects.requireNonNull(finding.value());
        double way = Math.max(limits.lower() - was, was - limits.upper());
        return value >= limits.lower() - 0.05 * way && value <= limits.upper() + 0.05 * way;
    }

    private static double written(CarriedMove move, DimensionSet set) {
        double change = move.move().change();
        boolean mm = move.move().variable().unit() == Unit.MM && set.scale() == Scale.MILLIMETRES;
        return mm && Math.abs(change) >= 10 ? Math.signum(change) * Math.ceil(Math.abs(change) - 1e-6) : change;
    }
}
