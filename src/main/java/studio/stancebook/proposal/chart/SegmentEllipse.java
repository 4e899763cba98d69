package studio.stancebook.proposal.chart;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.classes.Pair;
import studio.stancebook.statistics.ConcentrationEllipse;
import studio.stancebook.statistics.PairMoments;

/**
 * Where the class of a segment lies in two measures.
 *
 * @param own whether it is the segment that the page is about
 * @param ellipse null where there are too few pairs or all lie on one line
 * @param lack key of the reason; null where there is an ellipse
 */
record SegmentEllipse(
        SegmentName segment,
        boolean own,
        PairMoments moments,
        @Nullable ConcentrationEllipse ellipse,
        @Nullable String lack) {

    /** The share of the class that an ellipse would hold if the class were normal. */
    static final double SHARE = 0.8;

    static SegmentEllipse of(SegmentName segment, boolean own, List<Pair> pairs) {
        PairMoments moments = PairMoments.of(
                pairs.stream().mapToDouble(Pair::x).toArray(),
                pairs.stream().mapToDouble(Pair::y).toArray());
        String lack = ConcentrationEllipse.lack(moments)
                .map(reason -> reason == ConcentrationEllipse.Lack.TOO_FEW ? "too-few" : "on-a-line")
                .orElse(null);
        return new SegmentEllipse(
                segment, own, moments, lack == null ? ConcentrationEllipse.of(moments, SHARE) : null, lack);
    }
}
