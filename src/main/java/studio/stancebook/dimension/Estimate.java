package studio.stancebook.dimension;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A value with its first-order sensitivities to the recorded variables; arithmetic carries them along exactly (the chain
 * rule), so that uncertainties combine as in JCGM 100 section 5.1.2 for independent variables.
 */
public final class Estimate {

    private static final int[] NOWHERE = {};
    private static final double[] FLAT = {};

    private final double value;
    private final int[] at;
    private final double[] slope;

    private Estimate(double value, int[] at, double[] slope) {
        this.value = value;
        this.at = at;
        this.slope = slope;
    }

    /** A number that depends on nothing recorded. */
    public static Estimate constant(double value) {
        return new Estimate(value, NOWHERE, FLAT);
    }

    /** A recorded value: sensitivity 1 to its own variable. */
    public static Estimate of(Variable variable, double value) {
        return new Estimate(value, new int[] {variable.index()}, new double[] {1});
    }

    public double value() {
        return value;
    }

    public Estimate plus(Estimate other) {
        return combine(value + other.value, 1, other, 1);
    }

    public Estimate minus(Estimate other) {
        return combine(value - other.value, 1, other, -1);
    }

    public Estimate times(double factor) {
        return scaled(value * factor, factor);
    }

    public Estimate times(Estimate other) {
        return combine(value * other.value, other.value, other, value);
    }

    /** The quotient; infinite or NaN when {@code other} is zero, which callers ask about first. */
    public Estimate over(Estimate other) {
        double ratio = value / other.value;
        return combine(ratio, 1 / other.value, other, -ratio / other.value);
    }

    /** The direction of a line that rises by this and runs by {@code run}, in degrees, from -180 to 180. */
    public Estimate directionDeg(Estimate run) {
        double square = value * value + run.value * run.value;
        double angle = Math.toDegrees(Math.atan2(value, run.value));
        return combine(angle, Math.toDegrees(run.value / square), run, Math.toDegrees(-value / square));
    }

    /**
     * A function of this and another estimate whose value and partial derivatives are known.
     *
     * @param result the function's value
     * @param partial its partial derivative by this
     * @param other the other argument
     * @param otherPartial its partial derivative by {@code other}
     */
    public Estimate combine(double result, double partial, Estimate other, double otherPartial) {
        int[] mergedAt = new int[at.length + other.at.length];
        double[] mergedSlope = new double[mergedAt.length];
        int count = 0;
        int i = 0;
        int j = 0;
        while (i < at.length || j < other.at.length) {
            int left = i < at.length ? at[i] : Integer.MAX_VALUE;
            int right = j < other.at.length ? other.at[j] : Integer.MAX_VALUE;
            mergedAt[count] = Math.min(left, right);
            mergedSlope[count++] =
                    (left <= right ? partial * slope[i++] : 0) + (right <= left ? otherPartial * other.slope[j++] : 0);
        }
        return new Estimate(result, Arrays.copyOf(mergedAt, count), Arrays.copyOf(mergedSlope, count));
    }

    private Estimate scaled(double result, double partial) {
        double[] scaledSlope = slope.clone();
        for (int i = 0; i < scaledSlope.length; i++) {
            scaledSlope[i] *= partial;
        }
        return new Estimate(result, at, scaledSlope);
    }

    /** The sensitivities that are not zero, by variable. */
    public Map<Variable, Double> sensitivities() {
        Map<Variable, Double> sensitivities = new LinkedHashMap<>();
        for (int i = 0; i < at.length; i++) {
            if (slope[i] != 0) {
                sensitivities.put(Variable.at(at[i]), slope[i]);
            }
        }
        return sensitivities;
    }

    /**
     * The combined standard uncertainty: the root of the sum of squares of sensitivity times standard uncertainty.
     *
     * @param standardUncertainty of each variable, in its unit, not negative
     */
    public double uncertainty(ToDoubleFunction<Variable> standardUncertainty) {
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            double part = slope[i] * standardUncertainty.applyAsDouble(Variable.at(at[i]));
            sum += part * part;
        }
        return Math.sqrt(sum);
    }
}
