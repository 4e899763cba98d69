package studio.stancebook.statistics;

/** Constants that let a robust measure of spread stand in for a standard deviation. */
public final class Spread {

    /**
     * Standard deviation / median absolute deviation for normal data, 1 / 0.674490 to four decimals (the constant of R's
     * {@code mad()}).
     */
    public static final double SD_PER_MEDIAN_DEVIATION = 1.4826;

    /**
     * Standard deviation / mean absolute deviation for normal data, sqrt(pi / 2) to six decimals (B. Iglewicz and D. C.
     * Hoaglin, How to Detect and Handle Outliers, ASQC 1993; constant from memory).
     */
    public static final double SD_PER_MEAN_DEVIATION = 1.253314;

    private Spread() {}
}
