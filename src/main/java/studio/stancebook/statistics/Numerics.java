package studio.stancebook.statistics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.analysis.solvers.UnivariateSolverUtils;

/** Integrals and roots by Hipparchus, to about the rounding of a double (decision 0090). */
final class Numerics {

    /** The Gauss-Legendre rule of 64 points on [-1, 1]. */
    static final GaussIntegrator LEGENDRE = new GaussIntegratorFactory().legendre(64);

    private static final double RELATIVE_ACCURACY = 4 * Math.ulp(1.0);
    private static final int ORDER = 5;
    private static final int MOST_EVALUATIONS = 300;
    private static final double DOUBLING = 2;

    private Numerics() {}

    /** The integral of a function that is smooth from {@code lower} to {@code upper}; 0 where these are the same. */
    static double integral(UnivariateFunction f, double lower, double upper) {
        double half = (upper - lower) / 2;
        return half * LEGENDRE.integrate(t -> f.value(lower + half * (1 + t)));
    }

    /** The root of an increasing function that is known to lie in [low, high]; an end, where rounding hides the change of sign. */
    static double root(UnivariateFunction f, double low, double high) {
        if (f.value(low) >= 0) {
            return low;
        }
        if (f.value(high) <= 0) {
            return high;
        }
        return new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, RELATIVE_ACCURACY * (high - low), 0, ORDER)
                .solve(MOST_EVALUATIONS, f, low, high);
    }

    /** The root of an increasing function, looked for outward from {@code start} in growing steps, the first {@code reach}. */
    static double rootNear(UnivariateFunction f, double start, double reach) {
        double[] ends = UnivariateSolverUtils.bracket(
                f, start, -Double.MAX_VALUE, Double.MAX_VALUE, reach, DOUBLING, MOST_EVALUATIONS);
        return root(f, ends[0], ends[1]);
    }
}
