package studio.stancebook.proposal.chart;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;
import studio.stancebook.proposal.JudgedProposal;

/**
 * A proposal among the benchmarks: a shape that says how it was judged in the two measures, and its name beside it.
 *
 * @param verdict key of the worse of the two verdicts
 * @param shape path data around 0, 0
 */
record ProposalMark(long id, String name, double x, double y, String verdict, String shape) {

    /** Empty where one of the measures has no value. */
    static Optional<ProposalMark> of(JudgedProposal proposal, String measureX, String measureY) {
        Finding x = proposal.assessment().find(measureX).orElse(null);
        Finding y = proposal.assessment().find(measureY).orElse(null);
        Double valueX = value(x);
        Double valueY = value(y);
        if (x == null || y == null || valueX == null || valueY == null) {
            return Optional.empty();
        }
        Verdict.VerdictKind worse = rank(x.kind()) >= rank(y.kind()) ? x.kind() : y.kind();
        return Optional.of(new ProposalMark(proposal.id(), proposal.name(), valueX, valueY, worse.key(), shape(worse)));
    }

    private static @Nullable Double value(@Nullable Finding finding) {
        return finding == null ? null : finding.value();
    }

    private static int rank(Verdict.VerdictKind kind) {
        return switch (kind) {
            case OUTSIDE_LOW, OUTSIDE_HIGH -> 3;
            case TOO_CLOSE -> 2;
            case INSIDE -> 1;
            case NO_BAND, NOT_MEASURABLE -> 0;
        };
    }

    /** Several times the size of a dot: a diamond inside, a triangle outside, a square that is too close to call, a cross without a band. */
    private static String shape(Verdict.VerdictKind kind) {
        return switch (kind) {
            case OUTSIDE_LOW, OUTSIDE_HIGH -> "M0-14L14 11H-14Z";
            case TOO_CLOSE -> "M-10-10H10V10H-10Z";
            case INSIDE -> "M0-14L14 0L0 14L-14 0Z";
            case NO_BAND, NOT_MEASURABLE -> "M-11-11L11 11M11-11L-11 11";
        };
    }
}
