package studio.stancebook.statistics;

import java.util.Optional;
import studio.stancebook.quantity.Interval;

/** Edges as computed, which may still coincide. */
record ComputedEdges(double lower, double upper, Interval lowerInterval, Interval upperInterval, BandBasis basis) {

    BandOutcome outcome(int n) {
        if (!(lower < upper)) {
            return NoBandPossible.withoutSpread(n);
        }
        boolean provisional = ClassSize.of(n) == ClassSize.PROVISIONAL;
        return new BandEdges(lower, upper, said(lowerInterval), said(upperInterval), n, provisional, basis);
    }

    /** An interval that is open on both sides says nothing. */
    private static Optional<Interval> said(Interval interval) {
        return Double.isInfinite(interval.lower()) && Double.isInfinite(interval.upper())
                ? Optional.empty()
                : Optional.of(interval);
    }
}
