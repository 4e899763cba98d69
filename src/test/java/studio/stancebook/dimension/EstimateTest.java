package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.BinaryOperator;
import org.junit.jupiter.api.Test;

/** Derivatives against central differences; the combination rule against JCGM 100:2008, 5.1.2. */
class EstimateTest {

    private static final Variable A = Variable.of(Dimension.WHEELBASE);
    private static final Variable B = Variable.of(Dimension.OVERALL_LENGTH);

    private static void checkDerivatives(BinaryOperator<Estimate> function, double a, double b) {
        Map<Variable, Double> slopes = at(function, a, b).sensitivities();
        double step = 1e-5;
        double byA =
                (at(function, a + step, b).value() - at(function, a - step, b).value()) / (2 * step);
        double byB =
                (at(function, a, b + step).value() - at(function, a, b - step).value()) / (2 * step);
        assertEquals(byA, slopes.getOrDefault(A, 0.0), 1e-7);
        assertEquals(byB, slopes.getOrDefault(B, 0.0), 1e-7);
    }

    private static Estimate at(BinaryOperator<Estimate> function, double a, double b) {
        return function.apply(Estimate.of(A, a), Estimate.of(B, b));
    }

    @Test
    void carriesExactDerivativesThroughArithmetic() {
        checkDerivatives(Estimate::plus, 3, 5);
        checkDerivatives(Estimate::minus, 3, 5);
        checkDerivatives(Estimate::times, 3, 5);
        checkDerivatives(Estimate::over, 3, 5);
        checkDerivatives(Estimate::directionDeg, 3, -5);
        checkDerivatives((a, b) -> a.plus(b).over(b.times(2)).times(a), 3, 5);
    }

    @Test
    void dependsOnNothingWhenTheSameValueCancels() {
        Estimate difference = Estimate.of(A, 4).minus(Estimate.of(A, 4));

        assertEquals(0, difference.value());
        assertTrue(difference.sensitivities().isEmpty());
    }

    @Test
    void combinesIndependentUncertaintiesAsRootOfSquares() {
        Estimate sum = Estimate.of(A, 10).plus(Estimate.of(B, 20).times(2));

        assertEquals(Math.sqrt(3 * 3 + 8 * 8), sum.uncertainty(v -> v == A ? 3 : 4), 1e-12);
    }

    @Test
    void addsFullyCorrelatedUncertaintiesOfOneVariableLinearly() {
        Estimate twice = Estimate.of(A, 10).plus(Estimate.of(A, 10));

        assertEquals(6, twice.uncertainty(v -> 3), 1e-12);
    }
}
