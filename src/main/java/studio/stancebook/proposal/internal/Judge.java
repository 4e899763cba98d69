package studio.stancebook.proposal.internal;

import java.util.Map;
import org.springframework.stereotype.Component;
import studio.stancebook.band.AppliedBand;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Assessor;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.StudioMeasures;

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
     */
    public record Judgement(long classRevision, Assessment assessment) {}

    /** @throws studio.stancebook.catalogue.UnknownSegment if there is no such segment */
    public Judgement judge(DimensionSet dimensions, String segment) {
        long revision = segments.revision(segment);
        Assessor assessor = new Assessor(measures.current());
        return new Judgement(revision, count.of(assessor.assess(dimensions, bands.applied(segment))));
    }

    /** The verdicts without single moves, which take most of the time. */
    public Assessment verdicts(DimensionSet dimensions, String segment) {
        return verdicts(dimensions, bands.applied(segment));
    }

    /** As {@link #verdicts(DimensionSet, String)}, by bands that were read already. */
    public Assessment verdicts(DimensionSet dimensions, Map<String, AppliedBand> applied) {
        return count.of(new Assessor(measures.current()).verdicts(dimensions, applied));
    }
}
