package studio.stancebook.proposal.internal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import studio.stancebook.band.AppliedBand;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Assessor;
import studio.stancebook.band.Bands;
import studio.stancebook.band.Finding;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.moves.SingleMove;
import studio.stancebook.moves.SingleMoves;

/** Holds dimension sets against the bands of a segment as they are now. */
@Component
public class Judge {

    private final StudioMeasures measures;
    private final Bands bands;
    private final Segments segments;
    private final VerdictCount count;

    Judge(StudioMeasures measures, Bands bands, Segments segments, VerdictCount count) {
        this.count = count;
        this.measures = measures;
        this.bands = bands;
        this.segments = segments;
    }

    /**
     * @param classRevision the revision of the class at that time
     * @param assessment with the band versions
     * @param moves the single moves of the measures that are outside
     */
    public record Judgement(long classRevision, Assessment assessment, Map<String, List<SingleMove>> moves) {}

    /** @throws studio.stancebook.classes.UnknownSegment if there is no such segment */
    public Judgement judge(DimensionSet dimensions, String segment) {
        long revision = segments.revision(segment);
        MeasureRegistry registry = measures.current();
        Assessment found = count.of(new Assessor(registry).assess(dimensions, bands.applied(segment)));
        return new Judgement(revision, found, moves(registry, dimensions, found));
    }

    private static Map<String, List<SingleMove>> moves(
            MeasureRegistry registry, DimensionSet dimensions, Assessment found) {
        Map<String, List<SingleMove>> moves = new HashMap<>();
        for (Finding finding : found.findings()) {
            AppliedBand band = finding.band();
            if (band != null && finding.kind().outside()) {
                Measure measure = registry.get(finding.measure());
                moves.put(measure.key(), SingleMoves.into(band.limits(), measure, dimensions));
            }
        }
        return moves;
    }

    /** The verdicts without single moves, which would take most of the time. */
    public Assessment verdicts(DimensionSet dimensions, String segment) {
        return verdicts(dimensions, bands.applied(segment));
    }

    /** As {@link #verdicts(DimensionSet, String)}, by bands that were read already. */
    public Assessment verdicts(DimensionSet dimensions, Map<String, AppliedBand> applied) {
        return count.of(new Assessor(measures.current()).assess(dimensions, applied));
    }
}
