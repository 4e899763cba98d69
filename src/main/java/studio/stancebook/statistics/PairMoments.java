package studio.stancebook.statistics;

/**
 * Means, variances and covariance of pairs of values.
 *
 * @param n how many pairs
 * @param varianceX with n - 1; 0 for fewer than two pairs
 * @param varianceY with n - 1; 0 for fewer than two pairs
 * @param covariance with n - 1; 0 for fewer than two pairs
 */
public record PairMoments(int n, double meanX, double meanY, double varianceX, double varianceY, double covariance) {

    /** Below this share of the product of the variances a determinant is only rounding. */
    private static final double ROUNDING = 1e-10;

    /**
     * Of pairs, in two passes.
     *
     * @param x finite
     * @param y finite, as many
     */
    public static PairMoments of(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("There are " + x.length + " values of x and " + y.length + " of y.");
        }
        int n = x.length;
        double meanX = mean(x);
        double meanY = mean(y);
        if (n < 2) {
            return new PairMoments(n, meanX, meanY, 0, 0, 0);
        }
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = 0; i < n; i++) {
            double dx = x[i] - meanX;
            double dy = y[i] - meanY;
            xx += dx * dx;
            yy += dy * dy;
            xy += dx * dy;
        }
        return new PairMoments(n, meanX, meanY, xx / (n - 1), yy / (n - 1), xy / (n - 1));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double first = values.length == 0 ? 0 : sum / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - first;
        }
        return values.length == 0 ? 0 : first + rest / values.length;
    }

    double determinant() {
        return varianceX * varianceY - covariance * covariance;
    }

    /** Whether all pairs lie on one line, so that no distance can be measured across it. */
    public boolean onALine() {
        return !(determinant() > ROUNDING * varianceX * varianceY);
    }

    /**
     * The squared Mahalanobis distance of a pair from the mean; not to be asked when {@link #onALine()}.
     *
     * <p>Source: P. C. Mahalanobis, "On the generalised distance in statistics", 1936; checked against R's mahalanobis().
     */
    public double squaredDistance(double x, double y) {
        double dx = x - meanX;
        double dy = y - meanY;
        return (varianceY * dx * dx - 2 * covariance * dx * dy + varianceX * dy * dy) / determinant();
    }
}
