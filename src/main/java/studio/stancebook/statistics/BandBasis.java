package studio.stancebook.statistics;

/** How the edges of a band came about: the figures that explain them to a reader. */
public sealed interface BandBasis {

    /**
     * Typed by a person.
     *
     * @param reason why
     */
    record Typed(String reason) implements BandBasis {}

    /**
     * Two quantiles.
     *
     * @param type how they were read
     * @param lower the interval of the lower edge, with its ranks and the confidence that it achieves
     * @param upper the interval of the upper edge
     */
    record FromQuantiles(QuantileType type, OrderStatisticInterval lower, OrderStatisticInterval upper)
            implements BandBasis {}

    /**
     * Mean +/- factor x standard deviation.
     *
     * @param mean of the class
     * @param standardDeviation of the class, by n - 1
     * @param factor the exact two-sided tolerance factor
     */
    record FromMean(double mean, double standardDeviation, double factor) implements BandBasis {}

    /**
     * Two values of the class.
     *
     * @param lowerRank rank of the lower edge, counted from 1
     * @param upperRank rank of the upper edge
     * @param achievedConfidence probability that the content is held, at least the one asked for
     */
    record FromRanks(int lowerRank, int upperRank, double achievedConfidence) implements BandBasis {}

    /**
     * Median +/- k x 1.4826 x median absolute deviation.
     *
     * @param median of the class
     * @param medianAbsoluteDeviation of the class, raw
     */
    record FromMedian(double median, double medianAbsoluteDeviation) implements BandBasis {}
}
