package studio.stancebook.statistics;

import java.util.Optional;

/** Computes the edges of a band. */
public final class BandCalculator {

    /** Confidence of the interval of each edge. */
    public static final double EDGE_CONFIDENCE = 0.95;

    private BandCalculator() {}

    /**
     * The edges that a method finds in a class, with their intervals at 95 %. The same method and class give the same
     * answer, to the last bit, whenever asked.
     *
     * <ul>
     *   <li>Rule: as typed, whatever the class, never provisional.
     *   <li>Percentile: {@link SortedColumn#quantile}; intervals by {@link OrderStatisticInterval}.
     *   <li>Tolerance: mean +/- k s by {@link ToleranceFactor#twoSided}; the intervals are those of mu +/- k sigma of a
     *       normal population (noncentral t).
     *   <li>Distribution-free: the values of two ranks by {@link DistributionFree}; the intervals are those of the
     *       quantiles r / (n + 1) that these values estimate, by {@link OrderStatisticInterval}.
     *   <li>Robust: median +/- k x 1.4826 x MAD; intervals by bootstrap with a fixed seed, none for a provisional class.
     * </ul>
     *
     * <p>There is no band from fewer than {@value ClassSize#COMPUTED_FROM} values, none without width (all values equal;
     * for a robust band more than half of them), and no distribution-free band below the n that its content and
     * confidence need. From fewer than {@value ClassSize#SUFFICIENT_FROM} values a band is provisional.
     */
    public static BandOutcome compute(BandMethod method, SortedColumn column) {
        if (method instanceof BandMethod.Rule rule) {
            return typed(rule, column.n());
        }
        if (ClassSize.of(column.n()) == ClassSize.TOO_SMALL) {
            return NoBandPossible.needing(
                    NoBandPossible.Reason.TOO_FEW_VALUES,
                    column.n(),
                    Math.max(ClassSize.COMPUTED_FROM, neededN(method)));
        }
        return computed(method, column);
    }

    private static BandOutcome typed(BandMethod.Rule rule, int n) {
        return new BandEdges(
                rule.lower(),
                rule.upper(),
                Optional.empty(),
                Optional.empty(),
                n,
                false,
                new BandBasis.Typed(rule.reason()));
    }

    private static BandOutcome computed(BandMethod method, SortedColumn column) {
        if (method instanceof BandMethod.Percentile percentile) {
            return PercentileEdges.of(percentile, column).outcome(column.n());
        }
        if (method instanceof BandMethod.Tolerance tolerance) {
            return ToleranceEdges.of(tolerance, column).outcome(column.n());
        }
        if (method instanceof BandMethod.Robust robust) {
            return RobustEdges.of(robust, column).outcome(column.n());
        }
        if (method instanceof BandMethod.DistributionFree distributionFree) {
            return distributionFree(distributionFree, column);
        }
        throw new IllegalStateException("No way to compute a band by " + method.key());
    }

    private static BandOutcome distributionFree(BandMethod.DistributionFree method, SortedColumn column) {
        int n = column.n();
        int rank = DistributionFree.lowerRank(n, method.content(), method.confidence());
        return rank == 0
                ? NoBandPossible.needing(NoBandPossible.Reason.TOO_FEW_FOR_CONFIDENCE, n, neededN(method))
                : RankEdges.of(rank, method.content(), column).outcome(n);
    }

    private static long neededN(BandMethod method) {
        return method instanceof BandMethod.DistributionFree free
                ? DistributionFree.neededN(DistributionFree.TWO_SIDED, free.content(), free.confidence())
                : ClassSize.COMPUTED_FROM;
    }
}
