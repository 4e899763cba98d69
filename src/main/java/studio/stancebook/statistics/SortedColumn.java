package studio.stancebook.statistics;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The values of one measure over one class, in ascending order; immutable. Every figure is read in O(1) or O(log n), but
 * for {@link #meanAbsoluteDeviation()}; {@link #with}, {@link #without} and {@link #exchanged} give the column of a
 * changed class without sorting, summing or copying it all again.
 *
 * <p>The unit is that of the measure, and every figure has it. Values are finite and between -1e100 and 1e100; -0 counts
 * as 0. The order in which the values came makes no difference to any figure, to the last bit, when a column is made by
 * {@link #of}; mean and standard deviation keep a relative accuracy of 1e-13 or better however often values came and
 * went.
 */
public final class SortedColumn {

    private static final SortedColumn EMPTY = new SortedColumn(Ascending.of(new double[0]), Moments.NONE);

    private final Ascending sorted;
    private final Moments moments;

    private SortedColumn(Ascending sorted, Moments moments) {
        this.sorted = sorted;
        this.moments = moments;
    }

    /**
     * The column of these values; the array is not changed.
     *
     * @throws IllegalArgumentException if a value is NaN, infinite or beyond 1e100; the message names index and value
     */
    public static SortedColumn of(double... values) {
        double[] sorted = AcceptedValues.copyOf(values);
        RadixSort.sort(sorted);
        return new SortedColumn(Ascending.of(sorted), Moments.ofSorted(sorted));
    }

    /** The column of no values. */
    public static SortedColumn empty() {
        return EMPTY;
    }

    /**
     * This column and one value more.
     *
     * @throws IllegalArgumentException if {@code value} is NaN, infinite or beyond 1e100
     */
    public SortedColumn with(double value) {
        double added = AcceptedValues.accepted(value, "value");
        return of(sorted.with(sorted.countBelow(added), added), moments.with(added));
    }

    /**
     * This column less one value; of equal values, one goes.
     *
     * @throws IllegalArgumentException if {@code value} is not in the column
     */
    public SortedColumn without(double value) {
        int index = place(value);
        return of(sorted.without(index), moments.without(sorted.at(index)));
    }

    /**
     * This column less one value and plus another.
     *
     * @throws IllegalArgumentException if {@code gone} is not in the column, or {@code come} is NaN, infinite or beyond
     *     1e100
     */
    public SortedColumn exchanged(double gone, double come) {
        int from = place(gone);
        double added = AcceptedValues.accepted(come, "value");
        Ascending rest = sorted.without(from);
        return of(
                rest.with(rest.countBelow(added), added),
                moments.without(sorted.at(from)).with(added));
    }

    private int place(double value) {
        int index = sorted.countBelow(value);
        if (index == n() || sorted.at(index) != value) {
            throw new IllegalArgumentException("The value " + value + " is not among the " + n() + " of the column");
        }
        return index;
    }

    private static SortedColumn of(Ascending sorted, Moments moments) {
        return new SortedColumn(sorted, moments.isWorn() ? Moments.ofSorted(sorted.toArray()) : moments);
    }

    /** How many values. */
    public int n() {
        return sorted.size();
    }

    /** True if there are no values. */
    public boolean isEmpty() {
        return sorted.size() == 0;
    }

    /**
     * The value of that rank (order statistic).
     *
     * @param rank from 1, the smallest value, to n, the largest
     * @throws IllegalArgumentException if {@code rank} is not from 1 to n
     */
    public double ofRank(int rank) {
        if (rank < 1 || rank > n()) {
            throw new IllegalArgumentException("Rank is " + rank + "; the column has the ranks 1 to " + n());
        }
        return sorted.at(rank - 1);
    }

    /** The values in ascending order, as a copy. */
    public double[] toArray() {
        return sorted.toArray();
    }

    /** How many values are smaller than {@code value}. */
    public int countBelow(double value) {
        return sorted.countBelow(value);
    }

    /** How many values are smaller than {@code value} or equal to it. */
    public int countAtMost(double value) {
        return sorted.countBelow(Math.nextUp(value));
    }

    /**
     * The smallest value.
     *
     * @throws IllegalStateException if the column is empty
     */
    public double min() {
        return notEmpty("smallest value").at(0);
    }

    /**
     * The largest value.
     *
     * @throws IllegalStateException if the column is empty
     */
    public double max() {
        return notEmpty("largest value").at(n() - 1);
    }

    /**
     * Sum of the values / n.
     *
     * @throws IllegalStateException if the column is empty
     */
    public double mean() {
        return min() == max() ? min() : moments.mean();
    }

    /**
     * Sample standard deviation, sqrt(sum of squared differences from the mean / (n - 1)).
     *
     * @return 0 or more, exactly 0 if all values are equal; nothing if n is 0 or 1
     */
    public OptionalDouble standardDeviation() {
        if (n() < 2) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(min() == max() ? 0 : Math.sqrt(moments.squaresAboutMean() / (n() - 1)));
    }

    /**
     * The p-quantile, see {@link Quantiles#of}.
     *
     * @throws IllegalStateException if the column is empty
     * @throws IllegalArgumentException if {@code p} is NaN or outside [0, 1]
     */
    public double quantile(double p, QuantileType type) {
        return Quantiles.of(notEmpty("quantile"), p, type);
    }

    /**
     * The middle value, or the mean of the two middle ones; the same by every quantile type.
     *
     * @throws IllegalStateException if the column is empty
     */
    public double median() {
        return quantile(0.5, QuantileType.TYPE_7);
    }

    /**
     * The 75 % quantile less the 25 % quantile, 0 for one value.
     *
     * @throws IllegalStateException if the column is empty
     */
    public double interquartileRange(QuantileType type) {
        return quantile(0.75, type) - quantile(0.25, type);
    }

    /**
     * Raw median absolute deviation: the median of |x - median|, 0 for one value, and 0 whenever more than half of the
     * values are equal. Exact, in O(log n).
     *
     * @throws IllegalStateException if the column is empty
     */
    public double medianAbsoluteDeviation() {
        return new Deviations(sorted, median()).median();
    }

    /**
     * Mean of |x - median|, in O(n); it stands in for the median absolute deviation where that is 0. Itself 0 only if all
     * values are equal.
     *
     * @throws IllegalStateException if the column is empty
     */
    public double meanAbsoluteDeviation() {
        double median = median();
        double[] deviations =
                Arrays.stream(sorted.toArray()).map(x -> Math.abs(x - median)).toArray();
        return SortedColumn.of(deviations).mean();
    }

    /** Every figure of the column, quantiles by type 7. */
    public Summary summary() {
        return Summary.of(this, QuantileType.TYPE_7);
    }

    private Ascending notEmpty(String figure) {
        if (isEmpty()) {
            throw new IllegalStateException("A column of no values has no " + figure);
        }
        return sorted;
    }

    /** True for a column of the same values. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SortedColumn column && Arrays.equals(toArray(), column.toArray());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(toArray());
    }

    @Override
    public String toString() {
        return "SortedColumn" + Arrays.toString(toArray());
    }
}
