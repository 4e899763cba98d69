package studio.stancebook.statistics;

/** Two quantiles of a class, each with its interval from rank to rank. */
final class PercentileEdges {

    private PercentileEdges() {}

    static ComputedEdges of(BandMethod.Percentile method, SortedColumn column) {
        OrderStatisticInterval lower = intervalOf(method.lowerQuantile(), column);
        OrderStatisticInterval upper = intervalOf(method.upperQuantile(), column);
        return new ComputedEdges(
                column.quantile(method.lowerQuantile(), method.type()),
                column.quantile(method.upperQuantile(), method.type()),
                lower.interval(),
                upper.interval(),
                new BandBasis.FromQuantiles(method.type(), lower, upper));
    }

    private static OrderStatisticInterval intervalOf(double p, SortedColumn column) {
        return OrderStatisticInterval.of(column, p, BandCalculator.EDGE_CONFIDENCE);
    }
}
