package studio.stancebook.statistics;

import java.util.OptionalDouble;

/**
 * Location and spread of one class column, in the unit of its measure.
 *
 * <p>n = 0: nothing but n. n = 1: every figure but the standard deviation; spreads are 0. From n = 2 on: every figure.
 * A figure that does not exist is empty, never 0 or NaN.
 *
 * @param n how many values
 * @param mean sum / n
 * @param standardDeviation by n - 1
 * @param min smallest value
 * @param p5 5 % quantile
 * @param p10 10 % quantile
 * @param p25 25 % quantile
 * @param median 50 % quantile
 * @param p75 75 % quantile
 * @param p90 90 % quantile
 * @param p95 95 % quantile
 * @param max largest value
 * @param interquartileRange p75 - p25
 * @param medianAbsoluteDeviation raw: median of |x - median|
 * @param quantileType the type of the quantiles
 */
public record Summary(
        int n,
        OptionalDouble mean,
        OptionalDouble standardDeviation,
        OptionalDouble min,
        OptionalDouble p5,
        OptionalDouble p10,
        OptionalDouble p25,
        OptionalDouble median,
        OptionalDouble p75,
        OptionalDouble p90,
        OptionalDouble p95,
        OptionalDouble max,
        OptionalDouble interquartileRange,
        OptionalDouble medianAbsoluteDeviation,
        QuantileType quantileType) {

    /** The figures of a column. */
    public static Summary of(SortedColumn column, QuantileType type) {
        return column.isEmpty() ? empty(type) : ofSome(column, type);
    }

    private static Summary empty(QuantileType type) {
        OptionalDouble none = OptionalDouble.empty();
        return new Summary(0, none, none, none, none, none, none, none, none, none, none, none, none, none, type);
    }

    private static Summary ofSome(SortedColumn column, QuantileType type) {
        return new Summary(
                column.n(),
                OptionalDouble.of(column.mean()),
                column.standardDeviation(),
                OptionalDouble.of(column.min()),
                OptionalDouble.of(column.quantile(0.05, type)),
                OptionalDouble.of(column.quantile(0.10, type)),
                OptionalDouble.of(column.quantile(0.25, type)),
                OptionalDouble.of(column.median()),
                OptionalDouble.of(column.quantile(0.75, type)),
                OptionalDouble.of(column.quantile(0.90, type)),
                OptionalDouble.of(column.quantile(0.95, type)),
                OptionalDouble.of(column.max()),
                OptionalDouble.of(column.interquartileRange(type)),
                OptionalDouble.of(column.medianAbsoluteDeviation()),
                type);
    }

    /** 1.4826 x the median absolute deviation, which stands in for a standard deviation; empty if n = 0. */
    public OptionalDouble scaledMedianAbsoluteDeviation() {
        return medianAbsoluteDeviation.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Spread.SD_PER_MEDIAN_DEVIATION * medianAbsoluteDeviation.getAsDouble());
    }

    /** How far the class can carry a band. */
    public ClassSize classSize() {
        return ClassSize.of(n);
    }
}
