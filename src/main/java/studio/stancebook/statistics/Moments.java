package studio.stancebook.statistics;

import org.apache.commons.numbers.core.DD;

/**
 * Sum and sum of squares of the differences d = x - shift, held in double-double (about 32 digits) so that values can be
 * added and taken away in any number without the mean or the spread drifting.
 *
 * <p>Each d is exact as a double-double, and each step errs by at most 2^-104 of the largest sum of squares seen. A
 * value taken away leaves that error behind; {@link #isWorn()} says when it could begin to show, and the owner then
 * sums afresh.
 *
 * @param n how many values
 * @param shift a value near the data, fixed while values come and go
 * @param sum sum of d
 * @param squares sum of d squared
 * @param largestSquares the largest {@code squares} since these sums were begun
 */
record Moments(int n, double shift, DD sum, DD squares, double largestSquares) {

    /** Below this share of the largest sum, 2^-104 per step is still under 1e-13 after a million steps. */
    private static final double WORN_SHARE = 1e-12;

    static final Moments NONE = new Moments(0, 0, DD.ZERO, DD.ZERO, 0);

    /** The sums of ascending values about their (lower) middle one. */
    static Moments ofSorted(double[] sorted) {
        if (sorted.length == 0) {
            return NONE;
        }
        double shift = sorted[(sorted.length - 1) / 2];
        DD sum = DD.ZERO;
        DD squares = DD.ZERO;
        for (double value : sorted) {
            DD difference = DD.ofDifference(value, shift);
            sum = sum.add(difference);
            squares = squares.add(difference.square());
        }
        return new Moments(sorted.length, shift, sum, squares, squares.hi());
    }

    Moments with(double value) {
        if (n == 0) {
            return new Moments(1, value, DD.ZERO, DD.ZERO, 0);
        }
        DD difference = DD.ofDifference(value, shift);
        DD newSquares = squares.add(difference.square());
        return new Moments(n + 1, shift, sum.add(difference), newSquares, Math.max(largestSquares, newSquares.hi()));
    }

    /** For a value that is among those summed. */
    Moments without(double value) {
        if (n == 1) {
            return NONE;
        }
        DD difference = DD.ofDifference(value, shift);
        return new Moments(
                n - 1, shift, sum.subtract(difference), squares.subtract(difference.square()), largestSquares);
    }

    /** Sum of squared differences from the mean, not below 0. */
    double squaresAboutMean() {
        return Math.max(0, squares.subtract(sum.square().divide(n)).doubleValue());
    }

    double mean() {
        return sum.divide(n).add(shift).doubleValue();
    }

    /** True when so much has been taken away that what is left may carry a visible error. */
    boolean isWorn() {
        return n > 0 && squaresAboutMean() < WORN_SHARE * largestSquares;
    }
}
