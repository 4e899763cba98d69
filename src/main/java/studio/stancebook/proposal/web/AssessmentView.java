package studio.stancebook.proposal.web;

import java.util.List;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Verdict.VerdictKind;
import studio.stancebook.drawing.strip.BandStrip;

/**
 * An assessment as a page shows it: what is outside first.
 *
 * @param judged how many measures were held against a band
 * @param missing how many packages of the class are not drawn, because what they were then is not kept
 */
record AssessmentView(
        int judged,
        int outside,
        int tooClose,
        List<BandStrip> outsideStrips,
        List<BandStrip> tooCloseStrips,
        List<BandStrip> insideStrips,
        List<BandStrip> withoutBand,
        List<BandStrip> notMeasurable,
        int missing) {

    static AssessmentView of(Assessment assessment, ProposalStrips strips, int missing) {
        return new AssessmentView(
                assessment.judged(),
                assessment.outside(),
                assessment.tooClose(),
                strips.of(assessment, VerdictKind.OUTSIDE_LOW, VerdictKind.OUTSIDE_HIGH),
                strips.of(assessment, VerdictKind.TOO_CLOSE),
                strips.of(assessment, VerdictKind.INSIDE),
                strips.of(assessment, VerdictKind.NO_BAND),
                strips.of(assessment, VerdictKind.NOT_MEASURABLE),
                missing);
    }

    /** All strips that have a verdict, for the table behind them; public because the page asks. */
    public List<BandStrip> all() {
        return java.util.stream.Stream.of(outsideStrips, tooCloseStrips, insideStrips, withoutBand, notMeasurable)
                .flatMap(List::stream)
                .toList();
    }
}
