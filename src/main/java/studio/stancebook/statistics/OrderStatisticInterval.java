package studio.stancebook.statistics;

import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import studio.stancebook.quantity.Interval;

/**
 * A confidence interval for a quantile of the population, from one value of the sample to another, whatever the
 * distribution.
 *
 * <p>With B binomial (n, p), the value of rank l lies above the p-quantile with probability P(B &lt;= l - 1) at most, that
 * of rank u below it with P(B &gt;= u) at most. l is the greatest and u the least rank for which this is at most half of
 * what the confidence leaves. Where no rank is good enough that side is open: its end is infinite and its rank empty,
 * and such a sample says nothing about it. For the 5 % quantile the lower side is open up to n = 71 at 95 %.
 *
 * <p>The quantile of the sample lies within the interval but for shares so near to 0 or 1 (about 0.025 / n) that one value
 * is more than enough.
 *
 * <p>Source: H. A. David and H. N. Nagaraja, Order Statistics, section on distribution-free confidence intervals for
 * quantiles (from memory).
 *
 * @param interval closed, in the unit of the column; an open side is infinite
 * @param lowerRank rank of the lower end, counted from 1
 * @param upperRank rank of the upper end, counted from 1
 * @param achievedConfidence P(l - 1 &lt; B &lt; u), at least the confidence asked for
 */
public record OrderStatisticInterval(
        Interval interval, OptionalInt lowerRank, OptionalInt upperRank, double achievedConfidence) {

    /**
     * The interval for the p-quantile.
     *
     * @param column with any number of values; none leaves both sides open
     * @param p share of the population below the quantile, in [0, 1], ends included
     * @param confidence in (0, 1), ends excluded
     * @throws IllegalArgumentException if {@code p} or {@code confidence} is NaN or outside its range
     */
    public static OrderStatisticInterval of(SortedColumn column, double p, double confidence) {
        Shares.requireWithin("p", p);
        Shares.requireInside("confidence", confidence);
        BinomialDistribution below = BinomialDistribution.of(column.n(), p);
        double left = (1 - confidence) / 2;
        int lower = greatestLowerRank(below, left);
        int upper = leastUpperRank(below, left);
        return new OrderStatisticInterval(
                new Interval(
                        lower == 0 ? Double.NEGATIVE_INFINITY : column.ofRank(lower),
                        upper > column.n() ? Double.POSITIVE_INFINITY : column.ofRank(upper)),
                lower == 0 ? OptionalInt.empty() : OptionalInt.of(lower),
                upper > column.n() ? OptionalInt.empty() : OptionalInt.of(upper),
                1 - below.cumulativeProbability(lower - 1) - below.survivalProbability(upper - 1));
    }

    /** Greatest l with P(B &lt;= l - 1) &lt;= left; 0 if there is none. */
    private static int greatestLowerRank(BinomialDistribution below, double left) {
        int low = 0;
        int high = below.getNumberOfTrials();
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (below.cumulativeProbability(middle - 1) <= left) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Least u with P(B &gt;= u) &lt;= left; n + 1 if there is none. */
    private static int leastUpperRank(BinomialDistribution below, double left) {
        int low = 1;
        int high = below.getNumberOfTrials() + 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (below.survivalProbability(middle - 1) <= left) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
