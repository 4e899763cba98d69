package studio.stancebook.statistics;

/** Sample quantiles of values that are sorted already. */
public final class Quantiles {

    private Quantiles() {}

    /**
     * The p-quantile: linear between the two ranks around the position that {@code type} gives, the smallest or the
     * largest value where the position would lie beyond it. One value is its own quantile for every p.
     *
     * @param sorted ascending finite values, at least one; trusted, because checking would cost more than the answer
     * @param p share of the values below, in [0, 1], ends included
     * @return between {@code sorted[0]} and {@code sorted[n - 1]}, in their unit
     * @throws IllegalArgumentException if there is no value, or {@code p} is NaN or outside [0, 1]
     */
    public static double of(double[] sorted, double p, QuantileType type) {
        return of(Ascending.of(sorted), p, type);
    }

    /** As {@link #of(double[], double, QuantileType)}. */
    static double of(Ascending sorted, double p, QuantileType type) {
        if (sorted.size() == 0) {
            throw new IllegalArgumentException("No values have no quantile; at least one is needed");
        }
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("Quantile p is " + p + "; it must be from 0 to 1");
        }
        double position = type.position(sorted.size(), p);
        int rank = (int) position;
        double low = sorted.at(rank - 1);
        double high = sorted.at(Math.min(rank, sorted.size() - 1));
        return between(low, high, position - rank);
    }

    /** low + share x (high - low), never beyond high by a rounding. */
    static double between(double low, double high, double share) {
        return Math.min(low + share * (high - low), high);
    }
}
