package studio.stancebook.statistics;

import studio.stancebook.quantity.Interval;

/** Two values of a class, as many values beyond the one as beyond the other. */
final class RankEdges {

    private RankEdges() {}

    /** @param rank of the lower edge, 1 to n / 2 */
    static ComputedEdges of(int rank, double content, SortedColumn column) {
        int n = column.n();
        int upperRank = n + 1 - rank;
        return new ComputedEdges(
                column.ofRank(rank),
                column.ofRank(upperRank),
                intervalOf(rank, column),
                intervalOf(upperRank, column),
                new BandBasis.FromRanks(rank, upperRank, DistributionFree.confidence(n, 2 * rank, content)));
    }

    private static Interval intervalOf(int rank, SortedColumn column) {
        double p = rank / (column.n() + 1.0);
        return OrderStatisticInterval.of(column, p, BandCalculator.EDGE_CONFIDENCE)
                .interval();
    }
}
