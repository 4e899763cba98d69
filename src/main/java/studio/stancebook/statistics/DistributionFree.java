package studio.stancebook.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Distribution-free tolerance limits: values of the sample itself, between which at least the share {@code content} of
 * the population lies with probability {@code confidence}, whatever its (continuous) distribution.
 *
 * <p>The n values cut the population into n + 1 gaps. Limits that leave m of them outside leave a share of the population
 * outside that has the beta distribution of m and n - m + 1; the content is held if that share is at most 1 - content.
 * From rank r to rank n + 1 - r: m = 2 r.
 *
 * <p>Source: S. S. Wilks, Determination of sample sizes for setting tolerance limits, Annals of Mathematical Statistics
 * 12 (1941) 91-96; ISO 16269-6.
 */
public final class DistributionFree {

    /** What one-sided limits at the smallest or largest value leave outside. */
    public static final int ONE_SIDED = 1;

    /** What a two-sided interval from the smallest to the largest value leaves outside. */
    public static final int TWO_SIDED = 2;

    private DistributionFree() {}

    /**
     * The probability that a limit which leaves {@code gapsOutside} gaps outside holds the content.
     *
     * @param n size of the sample, 1 or more
     * @param gapsOutside 1 to n
     * @param content share of the population, in (0, 1), ends excluded
     * @return in [0, 1]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double confidence(int n, int gapsOutside, double content) {
        Shares.requireAtLeast(1, n);
        requireGaps(gapsOutside, n);
        Shares.requireInside("content", content);
        return confidenceOf(n, gapsOutside, content);
    }

    /**
     * The lower rank r of the narrowest interval, from rank r to rank n + 1 - r, that holds the content with the
     * confidence; the same number of values is left out at either end, so that a mirrored sample gives the mirrored
     * interval.
     *
     * @param n size of the sample, 1 or more
     * @return r, 1 or more; 0 if not even the smallest and the largest value will do
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static int lowerRank(int n, double content, double confidence) {
        Shares.requireInside("confidence", confidence);
        Shares.requireInside("content", content);
        Shares.requireAtLeast(1, n);
        int low = 0;
        int high = n / 2;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (confidence(n, 2 * middle, content) >= confidence) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /**
     * The least n for which limits that leave {@code gapsOutside} gaps outside hold the content with the confidence.
     *
     * @param gapsOutside 1 or more; see {@link #ONE_SIDED} and {@link #TWO_SIDED}
     * @param content share of the population, in (0, 1), ends excluded
     * @param confidence in (0, 1), ends excluded
     * @return {@code gapsOutside} or more
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static long neededN(int gapsOutside, double content, double confidence) {
        requireGaps(gapsOutside, Integer.MAX_VALUE);
        Shares.requireInside("content", content);
        Shares.requireInside("confidence", confidence);
        long high = gapsOutside;
        while (confidenceOf(high, gapsOutside, content) < confidence) {
            high *= 2;
        }
        long low = Math.max(gapsOutside, high / 2);
        while (low < high) {
            long middle = (low + high) >>> 1;
            if (confidenceOf(middle, gapsOutside, content) >= confidence) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static double confidenceOf(long n, int gapsOutside, double content) {
        return BetaDistribution.of(gapsOutside, n - gapsOutside + 1.0).cumulativeProbability(1 - content);
    }

    private static void requireGaps(int gapsOutside, int most) {
        if (gapsOutside < 1 || gapsOutside > most) {
            throw new IllegalArgumentException("gapsOutside is " + gapsOutside + "; it must be from 1 to " + most);
        }
    }
}
