package studio.stancebook.proposal.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Band;
import studio.stancebook.band.Bands;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.classes.PastClass;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.dimension.Scale;
import studio.stancebook.drawing.sideview.Alignment;
import studio.stancebook.drawing.sideview.Ghost;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.sideview.SideViewOptions;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.moves.CarriedMove;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.proposal.ShownRevision;

/** The side view and the strips of dimensions that were judged, whether they are kept or only tried. */
@Component
class ProposalPictures {

    private final Bands bands;
    private final ClassSnapshots classes;
    private final StudioMeasures measures;
    private final FindingWords words;

    ProposalPictures(Bands bands, ClassSnapshots classes, StudioMeasures measures, FindingWords words) {
        this.measures = measures;
        this.bands = bands;
        this.classes = classes;
        this.words = words;
    }

    /** The drawing of a revision, with the one before it behind. */
    SideView sideView(String name, ShownRevision shown) {
        RevisionView revision = shown.revision();
        ShownRevision.Earlier before = shown.before();
        SideViewOptions options = options(name, revision.dimensions(), revision.assessment());
        return SideView.of(
                revision.dimensions(), before == null ? options : laidOver(options, before, revision.dimensions()));
    }

    /** To the same wheel where one of the two has no lengths. */
    private SideViewOptions laidOver(SideViewOptions options, ShownRevision.Earlier before, DimensionSet dimensions) {
        boolean inWheels = before.dimensions().scale() != dimensions.scale();
        return options.withGhosts(List.of(new Ghost(words.revision(before.number()), before.dimensions())))
                .alignedAt(Alignment.FRONT_WHEEL, inWheels);
    }

    /** The drawing, with what is outside its band marked. */
    SideView sideView(String name, DimensionSet dimensions, Assessment assessment) {
        return SideView.of(dimensions, options(name, dimensions, assessment));
    }

    /** The drawing of dimensions that nobody has judged. */
    SideView sideView(String name, DimensionSet dimensions) {
        return SideView.of(dimensions, SideViewOptions.of("side-view", name));
    }

    private SideViewOptions options(String name, DimensionSet dimensions, Assessment assessment) {
        OptionalDouble wheel = wheelMm(dimensions);
        Map<String, String> remarks = new HashMap<>();
        assessment.findings().stream()
                .filter(finding -> finding.kind().outside())
                .forEach(finding -> remarks.put(finding.measure(), words.over(finding, wheel)));
        return SideViewOptions.of("side-view", name)
                .withOutside(measures(assessment, Verdict.VerdictKind::outside))
                .withTooClose(measures(assessment, kind -> kind == Verdict.VerdictKind.TOO_CLOSE))
                .withRemarks(remarks);
    }

    /** The diameter that lengths in wheels are counted in; none where it is no length in mm. */
    private static OptionalDouble wheelMm(DimensionSet dimensions) {
        return dimensions.scale() == Scale.UNSCALED
                ? OptionalDouble.empty()
                : new Readings(dimensions)
                        .find(Reading.WHEEL_DIAMETER)
                        .map(wheel -> OptionalDouble.of(wheel.value()))
                        .orElse(OptionalDouble.empty());
    }

    private static Set<String> measures(Assessment assessment, Predicate<Verdict.VerdictKind> which) {
        return assessment.findings().stream()
                .filter(finding -> which.test(finding.kind()))
                .map(Finding::measure)
                .collect(Collectors.toSet());
    }

    /** The strips of a revision by verdict, on the class and the bands that it was judged by. */
    AssessmentView assessment(ShownRevision shown) {
        List<Assessment> earlier =
                shown.earlier().stream().map(ShownRevision.Earlier::assessment).toList();
        return assessment(shown.revision(), shown.bands(), earlier);
    }

    /**
     * The strips of a revision by verdict, on the class and the bands that it was judged by.
     *
     * @param earlier what came before, oldest first, for the fading marks
     */
    AssessmentView assessment(RevisionView revision, List<Assessment> earlier) {
        return assessment(revision, bands.judgedBy(revision.segment().key(), revision.assessment()), earlier);
    }

    private AssessmentView assessment(RevisionView revision, Map<String, Band> judgedBy, List<Assessment> earlier) {
        PastClass then = classes.past(revision.segment().key(), revision.classRevision(), revision.at());
        boolean unscaled = revision.dimensions().scale() == Scale.UNSCALED;
        return AssessmentView.of(
                revision.assessment(),
                new ProposalStrips(
                        then.snapshot(),
                        judgedBy,
                        earlier,
                        finding -> words.remark(finding, carried(finding, revision), unscaled)),
                then.missing());
    }

    private List<CarriedMove> carried(Finding finding, RevisionView revision) {
        return measures.current()
                .find(finding.measure())
                .map(measure -> CarriedMove.of(revision.movesOf(measure.key()), measure, revision.dimensions())
                        .limit(FindingWords.MOST_MOVES)
                        .toList())
                .orElse(List.of());
    }

    /**
     * The strips of an assessment that holds no single moves: nothing is said of them.
     *
     * @param earlier what came before, oldest first, for the fading marks
     */
    AssessmentView withoutMoves(String segment, Assessment assessment, List<Assessment> earlier) {
        return AssessmentView.of(
                assessment,
                new ProposalStrips(classes.of(segment), bands.current(segment), earlier, words::remarkWithoutMoves),
                0);
    }
}
