package studio.stancebook.statistics;

import studio.stancebook.quantity.Interval;

/** Mean +/- k standard deviations of a class taken as normal. */
final class ToleranceEdges {

    private static final double BEYOND = (1 - BandCalculator.EDGE_CONFIDENCE) / 2;

    private ToleranceEdges() {}

    /** @param column of 3 values or more */
    static ComputedEdges of(BandMethod.Tolerance method, SortedColumn column) {
        double mean = column.mean();
        double sd = column.standardDeviation().orElseThrow();
        double k = ToleranceFactor.twoSided(column.n(), method.content(), method.confidence());
        NormalEdge edge = new NormalEdge(column.n(), k);
        double near = edge.factor(BEYOND) * sd;
        double far = edge.factor(1 - BEYOND) * sd;
        return new ComputedEdges(
                mean - k * sd,
                mean + k * sd,
                new Interval(mean - far, mean - near),
                new Interval(mean + near, mean + far),
                new BandBasis.FromMean(mean, sd, k));
    }
}
