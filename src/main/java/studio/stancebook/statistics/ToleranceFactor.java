package studio.stancebook.statistics;

/**
 * The factor k of normal tolerance intervals, mean +/- k x standard deviation, from a sample of n with mean and standard
 * deviation (n - 1) both unknown.
 *
 * <p>Source: ISO 16269-6 (statistical tolerance intervals), the exact definitions, solved here without its tables and
 * without the approximations of Howe or of Wald and Wolfowitz.
 */
public final class ToleranceFactor {

    private ToleranceFactor() {}

    /**
     * The factor of the two-sided interval: with probability {@code confidence} at least the share {@code content} of the
     * population lies within mean +/- k s. It solves
     *
     * <pre>  integral over z from 0 of 2 phi(z) Q(nu r(z / sqrt n)^2 / k^2) dz = confidence</pre>
     *
     * where Q is the upper tail of chi-square with nu = n - 1 degrees of freedom and r(x) the half-width that holds
     * {@code content} about a centre x standard deviations off the mean.
     *
     * @param n size of the sample, 2 or more
     * @param content share of the population, in (0, 1), ends excluded
     * @param confidence probability, in (0, 1), ends excluded
     * @return k, greater than 0; checked to 1e-9 relative for n from 2 to 100,000
     * @throws IllegalArgumentException if n is below 2, or a share is NaN or not in (0, 1)
     */
    public static double twoSided(int n, double content, double confidence) {
        Shares.requireAtLeast(2, n);
        Shares.requireInside("content", content);
        Shares.requireInside("confidence", confidence);
        return new TwoSidedFactor(n, content, confidence).solve();
    }
}
