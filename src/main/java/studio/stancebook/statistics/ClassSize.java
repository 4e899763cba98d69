package studio.stancebook.statistics;

/** How much a class of n values can carry; the limits are our own decision, without a source. */
public enum ClassSize {
    /** n &lt; 3: no band is computed and nothing is screened. */
    TOO_SMALL,
    /** 3 &lt;= n &lt; 8: a computed band is marked provisional. */
    PROVISIONAL,
    /** n &gt;= 8. */
    SUFFICIENT;

    /** From this n on a band is computed. */
    public static final int COMPUTED_FROM = 3;

    /** From this n on a computed band is not provisional. */
    public static final int SUFFICIENT_FROM = 8;

    /**
     * The size of a class of n values.
     *
     * @throws IllegalArgumentException if {@code n} is negative
     */
    public static ClassSize of(int n) {
        if (n < 0) {
            throw new IllegalArgumentException("n is " + n + "; a class has 0 or more values");
        }
        if (n < COMPUTED_FROM) {
            return TOO_SMALL;
        }
        return n < SUFFICIENT_FROM ? PROVISIONAL : SUFFICIENT;
    }
}
