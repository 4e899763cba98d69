package studio.stancebook.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Solves the two-sided tolerance factor in t = ln k by Newton's method, on the logarithm of the smaller of confidence and
 * 1 - confidence: there the function is nearly straight, and small tails keep their digits.
 */
final class TwoSidedFactor {

    /** What the integral leaves out beyond its upper end, relative to the smaller tail. */
    private static final double LEFT_OUT = 1e-17;

    private final double confidence;
    private final double degreesOfFreedom;
    private final ChiSquaredDistribution chiSquared;
    private final GaussLegendre rule;
    private final double[] squaredHalfWidths = new double[GaussLegendre.POINTS];
    private final double start;

    TwoSidedFactor(int n, double content, double confidence) {
        this.confidence = confidence;
        this.degreesOfFreedom = n - 1.0;
        this.chiSquared = ChiSquaredDistribution.of(degreesOfFreedom);
        double end = StandardNormal.upperQuantile(LEFT_OUT / 2 * Math.min(confidence, 1 - confidence));
        this.rule = new GaussLegendre(0, end, z -> 2 * StandardNormal.density(z));
        ContentHalfWidth halfWidth = new ContentHalfWidth(content);
        for (int i = 0; i < GaussLegendre.POINTS; i++) {
            double r = halfWidth.at(rule.points()[i] / Math.sqrt(n));
            squaredHalfWidths[i] = r * r;
        }
        this.start = Math.log(howe(n, halfWidth.at(0)));
    }

    double solve() {
        IncreasingFunction deviation = confidence > 0.5 ? this::ofUpperTail : this::ofLowerTail;
        return Math.exp(deviation.rootNear(start, 0.1));
    }

    /** Howe's approximation, within a few per cent; only to start from. */
    private double howe(int n, double halfWidthAtCentre) {
        double quantile = chiSquared.inverseCumulativeProbability(1 - confidence);
        double guess = halfWidthAtCentre * Math.sqrt(degreesOfFreedom * (1 + 1.0 / n) / quantile);
        return guess > 0 && guess < Double.POSITIVE_INFINITY ? guess : 1;
    }

    private IncreasingFunction.Point ofLowerTail(double t) {
        double tail = rule.sum(i -> chiSquared.survivalProbability(argument(i, t)));
        return new IncreasingFunction.Point(Math.log(tail / confidence), slope(t) / tail);
    }

    private IncreasingFunction.Point ofUpperTail(double t) {
        double tail = rule.sum(i -> chiSquared.cumulativeProbability(argument(i, t)));
        return new IncreasingFunction.Point(-Math.log(tail / (1 - confidence)), slope(t) / tail);
    }

    /** Derivative of the confidence by ln k, as the chi-square argument falls by twice itself for one unit of ln k. */
    private double slope(double t) {
        return rule.sum(i -> 2 * argument(i, t) * chiSquared.density(argument(i, t)));
    }

    private double argument(int index, double t) {
        return degreesOfFreedom * squaredHalfWidths[index] * Math.exp(-2 * t);
    }
}
