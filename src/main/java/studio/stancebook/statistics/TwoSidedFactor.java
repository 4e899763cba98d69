package studio.stancebook.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.hipparchus.analysis.UnivariateFunction;

/**
 * Solves the two-sided tolerance factor in t = ln k, on the logarithm of the smaller of confidence and 1 - confidence:
 * there the function is nearly straight, and small tails keep their digits.
 */
final class TwoSidedFactor {

    /** What the integral leaves out beyond its upper end, relative to the smaller tail. */
    private static final double LEFT_OUT = 1e-17;

    private static final int POINTS = Numerics.LEGENDRE.getNumberOfPoints();

    private final double confidence;
    private final double degreesOfFreedom;
    private final ChiSquaredDistribution chiSquared;
    /** At each point of the integral over z. */
    private final double[] weights = new double[POINTS];

    private final double[] squaredHalfWidths = new double[POINTS];
    private final double start;

    TwoSidedFactor(int n, double content, double confidence) {
        this.confidence = confidence;
        this.degreesOfFreedom = n - 1.0;
        this.chiSquared = ChiSquaredDistribution.of(degreesOfFreedom);
        ContentHalfWidth halfWidth = new ContentHalfWidth(content);
        double half = StandardNormal.upperQuantile(LEFT_OUT / 2 * Math.min(confidence, 1 - confidence)) / 2;
        for (int i = 0; i < POINTS; i++) {
            double z = half * (1 + Numerics.LEGENDRE.getPoint(i));
            double r = halfWidth.at(z / Math.sqrt(n));
            weights[i] = half * Numerics.LEGENDRE.getWeight(i) * 2 * StandardNormal.density(z);
            squaredHalfWidths[i] = r * r;
        }
        this.start = Math.log(howe(n, halfWidth.at(0)));
    }

    double solve() {
        UnivariateFunction excess = confidence > 0.5
                ? t -> -Math.log(mean(t, chiSquared::cumulativeProbability) / (1 - confidence))
                : t -> Math.log(mean(t, chiSquared::survivalProbability) / confidence);
        return Math.exp(Numerics.rootNear(excess, start, 0.1));
    }

    /** Howe's approximation, within a few per cent; only to start from. */
    private double howe(int n, double halfWidthAtCentre) {
        double quantile = chiSquared.inverseCumulativeProbability(1 - confidence);
        double guess = halfWidthAtCentre * Math.sqrt(degreesOfFreedom * (1 + 1.0 / n) / quantile);
        return guess > 0 && guess < Double.POSITIVE_INFINITY ? guess : 1;
    }

    /** The integral over z of a tail of chi-square at the factor exp t. */
    private double mean(double t, UnivariateFunction tail) {
        double scale = degreesOfFreedom * Math.exp(-2 * t);
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += weights[i] * tail.value(scale * squaredHalfWidths[i]);
        }
        return sum;
    }
}
