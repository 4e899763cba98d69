package studio.stancebook.statistics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** One Gauss-Legendre rule of 128 points, for integrands that are smooth on a finite interval. */
final class GaussLegendre {

    static final int POINTS = 128;

    private static final double[] NODES = new double[POINTS];
    private static final double[] WEIGHTS = new double[POINTS];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(POINTS);
        for (int i = 0; i < POINTS; i++) {
            NODES[i] = rule.getPoint(i);
            WEIGHTS[i] = rule.getWeight(i);
        }
    }

    private final double[] points = new double[POINTS];
    private final double[] factors = new double[POINTS];

    /** The rule for integrals of f(x) weight(x) from {@code lower} to {@code upper}. */
    GaussLegendre(double lower, double upper, DoubleUnaryOperator weight) {
        double half = (upper - lower) / 2;
        for (int i = 0; i < POINTS; i++) {
            points[i] = lower + half * (1 + NODES[i]);
            factors[i] = half * WEIGHTS[i] * weight.applyAsDouble(points[i]);
        }
    }

    /** The points at which an integrand is asked for, in ascending order; not to be changed. */
    double[] points() {
        return points;
    }

    /** The integral, from the values of f at the points. */
    double sum(IndexedFunction f) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += factors[i] * f.at(i);
        }
        return sum;
    }

    /** A function of the index of a point. */
    interface IndexedFunction {
        double at(int index);
    }
}
