package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.problem.ProblemType;

class BandMethodTest {

    private static final QuantileType TYPE = QuantileType.TYPE_7;

    @Test
    void rulesMayLeaveOneSideOpen() {
        assertEquals(
                Double.POSITIVE_INFINITY,
                BandMethod.Rule.of(3.4, null, "house rule").upper());
        assertEquals(
                Double.NEGATIVE_INFINITY,
                BandMethod.Rule.of(null, 3.7, "house rule").lower());
        assertEquals(new BandMethod.Rule(3.4, 3.7, "house rule"), BandMethod.Rule.of(3.4, 3.7, "house rule"));
    }

    @Test
    void rulesLimitAtLeastOneSide() {
        refused("lower", "both", () -> BandMethod.Rule.of(null, null, "why"));
    }

    @Test
    void rulesHaveTheirLimitsInOrder() {
        refused("lower", "lower is 3.7 and upper is 3.4", () -> BandMethod.Rule.of(3.7, 3.4, "why"));
        refused("lower", "lower is 3.4 and upper is 3.4", () -> BandMethod.Rule.of(3.4, 3.4, "why"));
        refused("lower", "NaN", () -> new BandMethod.Rule(Double.NaN, 1, "why"));
        refused("lower", "NaN", () -> new BandMethod.Rule(1, Double.NaN, "why"));
    }

    @Test
    void rulesTypeOnlyFiniteLimits() {
        refused("upper", "upper is Infinity", () -> BandMethod.Rule.of(1.0, Double.POSITIVE_INFINITY, "why"));
        refused("lower", "lower is NaN", () -> BandMethod.Rule.of(Double.NaN, 1.0, "why"));
    }

    @Test
    void rulesSayWhy() {
        refused("reason", "blank", () -> BandMethod.Rule.of(1.0, 2.0, " "));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void percentilesLieFromZeroToOne(double quantile) {
        refused(
                "lowerQuantile",
                quantile + "; it must be from 0 to 1",
                () -> new BandMethod.Percentile(quantile, 1, TYPE));
        refused(
                "upperQuantile",
                quantile + "; it must be from 0 to 1",
                () -> new BandMethod.Percentile(0, quantile, TYPE));
    }

    @Test
    void percentilesReachTheSmallestAndLargestValue() {
        assertEquals(1, new BandMethod.Percentile(0, 1, TYPE).upperQuantile());
    }

    @Test
    void percentilesAreInOrder() {
        refused("lowerQuantile", "below upperQuantile, 0.1", () -> new BandMethod.Percentile(0.9, 0.1, TYPE));
        refused("lowerQuantile", "below upperQuantile, 0.5", () -> new BandMethod.Percentile(0.5, 0.5, TYPE));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 90, Double.NaN})
    void sharesOfToleranceLieBetweenZeroAndOne(double share) {
        String range = share + "; it must be between 0 and 1, ends excluded";
        refused("content", range, () -> new BandMethod.Tolerance(share, 0.95));
        refused("confidence", range, () -> new BandMethod.Tolerance(0.9, share));
        refused("content", range, () -> new BandMethod.DistributionFree(share, 0.95));
        refused("confidence", range, () -> new BandMethod.DistributionFree(0.9, share));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 100.00000000000001, Double.NaN, Double.POSITIVE_INFINITY})
    void robustFactorsArePositiveAndNotAbsurd(double k) {
        refused("k", "k is " + k, () -> new BandMethod.Robust(k));
    }

    @Test
    void robustFactorsReachTheirEnds() {
        assertEquals(100, new BandMethod.Robust(100).k());
        assertEquals(Double.MIN_VALUE, new BandMethod.Robust(Double.MIN_VALUE).k());
    }

    @Test
    void haveTheirNamesInTheInterface() {
        assertEquals("rule", new BandMethod.Rule(1, 2, "why").key());
        assertEquals("percentile", new BandMethod.Percentile(0.1, 0.9, TYPE).key());
        assertEquals("tolerance", new BandMethod.Tolerance(0.9, 0.95).key());
        assertEquals("distribution-free", new BandMethod.DistributionFree(0.9, 0.95).key());
        assertEquals("robust", new BandMethod.Robust(2.5).key());
    }

    private static void refused(String field, String part, Executable making) {
        ImpossibleBandMethod refusal = assertThrows(ImpossibleBandMethod.class, making);
        assertEquals(ProblemType.IMPOSSIBLE, refusal.type());
        assertEquals(field, refusal.errors().get(0).field());
        assertTrue(refusal.detail().contains(part), refusal.detail());
    }
}
