package studio.stancebook.statistics;

import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/** One Gauss-Legendre rule of 64 points, for integrands that are smooth on a finite interval. */
final class GaussLegendre {

    static final int POINTS = 64;

    private static final int NEWTON_STEPS = 10;
    private static final double[] NODES = new double[POINTS];
    private static final double[] WEIGHTS = new double[POINTS];

    static {
        for (int i = 0; i < POINTS / 2; i++) {
            setPair(i, Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5)));
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

    /** The integral, from the values of f by the index of the point. */
    double sum(IntToDoubleFunction f) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += factors[i] * f.applyAsDouble(i);
        }
        return sum;
    }

    /** The i-th root x of the Legendre polynomial from above and its mirror image; weight 2 / ((1 - x^2) P'(x)^2). */
    private static void setPair(int i, double guess) {
        double x = guess;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            x -= legendre(x) / slope(x);
        }
        double weight = 2 / ((1 - x * x) * slope(x) * slope(x));
        NODES[POINTS - 1 - i] = x;
        NODES[i] = -x;
        WEIGHTS[POINTS - 1 - i] = weight;
        WEIGHTS[i] = weight;
    }

    private static double legendre(double x) {
        return lastTwo(x)[1];
    }

    /** P'(x) = n (P_(n-1)(x) - x P_n(x)) / (1 - x^2). */
    private static double slope(double x) {
        double[] p = lastTwo(x);
        return POINTS * (p[0] - x * p[1]) / (1 - x * x);
    }

    /** P_(n-1)(x) and P_n(x) by (j + 1) P_(j+1) = (2 j + 1) x P_j - j P_(j-1). */
    private static double[] lastTwo(double x) {
        double before = 1;
        double last = x;
        for (int j = 1; j < POINTS; j++) {
            double next = ((2 * j + 1) * x * last - j * before) / (j + 1);
            before = last;
            last = next;
        }
        return new double[] {before, last};
    }
}
