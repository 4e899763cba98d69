package studio.stancebook.statistics;

/**
 * How a quantile is read between two ranks: the position h of the quantile p among n values, counted from rank 1.
 *
 * <p>Numbering of R. J. Hyndman and Y. Fan, Sample quantiles in statistical packages, The American Statistician 50
 * (1996) 361-365.
 */
public enum QuantileType {
    /** h = (n + 1) p; the type of the NIST/SEMATECH e-Handbook 7.2.6.2. */
    TYPE_6(6),
    /** h = (n - 1) p + 1; the type used unless something else is asked for. */
    TYPE_7(7),
    /** h = (n + 1/3) p + 1/3; about median-unbiased whatever the distribution. */
    TYPE_8(8);

    private final int number;

    QuantileType(int number) {
        this.number = number;
    }

    /** The number of the type in Hyndman and Fan: 6, 7 or 8. */
    public int number() {
        return number;
    }

    /**
     * The type of that number.
     *
     * @throws IllegalArgumentException if {@code number} is not 6, 7 or 8
     */
    public static QuantileType of(int number) {
        for (QuantileType type : values()) {
            if (type.number == number) {
                return type;
            }
        }
        throw new IllegalArgumentException("Quantile type is " + number + "; the types 6, 7 and 8 can be chosen");
    }

    /** Position of the quantile p among n values, within [1, n]; written so that p = 1/2 falls exactly in the middle. */
    double position(int n, double p) {
        double position = switch (this) {
            case TYPE_6 -> n * p + p;
            case TYPE_7 -> (n - 1) * p + 1;
            case TYPE_8 -> n * p + (1 + p) / 3;
        };
        return Math.min(Math.max(position, 1), n);
    }
}
