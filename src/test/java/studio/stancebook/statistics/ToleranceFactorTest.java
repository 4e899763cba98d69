package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class ToleranceFactorTest {

    private static final double TOLERANCE = 1e-9;

    static Stream<JsonNode> integratedByR() {
        return rows("tolerance_factors.json", "rows");
    }

    static Stream<JsonNode> integratedToManyDigits() {
        return rows("tolerance_factors_high_precision.json", "two_sided");
    }

    static Stream<JsonNode> edgesIntegratedToManyDigits() {
        return rows("tolerance_factors_high_precision.json", "normal_edge");
    }

    private static Stream<JsonNode> rows(String file, String name) {
        return StreamSupport.stream(ReferenceFile.json(file).get(name).spliterator(), false);
    }

    /** R 4.2.2, the double integral. */
    @ParameterizedTest
    @MethodSource("integratedByR")
    void equalsTheDoubleIntegral(JsonNode row) {
        double k = ToleranceFactor.twoSided(n(row), number(row, "content"), number(row, "confidence"));
        assertRelative(number(row, "k2_exact"), k);
    }

    /** mpmath, another integral, over the standard deviation. From n = 2 to 100,000 and far into the tails. */
    @ParameterizedTest
    @MethodSource("integratedToManyDigits")
    void equalsTheOtherIntegralFarAndWide(JsonNode row) {
        double k = ToleranceFactor.twoSided(n(row), number(row, "content"), number(row, "confidence"));
        assertRelative(number(row, "k"), k);
    }

    /** P. M. Berthouex and L. C. Brown, Statistics for Environmental Engineers, Table 21.1, confidence 95 %. */
    @ParameterizedTest
    @CsvSource({
        "5, 4.29, 5.08, 6.60",
        "10, 2.86, 3.39, 4.44",
        "20, 2.32, 2.76, 3.62",
        "30, 2.15, 2.55, 3.35",
        "60, 1.96, 2.34, 3.07"
    })
    void roundsToThePrintedTable(int n, double k90, double k95, double k99) {
        assertEquals(k90, ToleranceFactor.twoSided(n, 0.90, 0.95), 0.005);
        assertEquals(k95, ToleranceFactor.twoSided(n, 0.95, 0.95), 0.005);
        assertEquals(k99, ToleranceFactor.twoSided(n, 0.99, 0.95), 0.005);
    }

    /** NIST/SEMATECH e-Handbook 7.2.6.3, n = 43: its 2.217 is Howe's; the exact factor is 2.222825174 (by R). */
    @Test
    void isNotHowesApproximation() {
        assertRelative(2.222825174, ToleranceFactor.twoSided(43, 0.9, 0.99));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.9, 0.99})
    void comesDownToTheNormalQuantileAsTheSampleGrows(double content) {
        double last = Double.POSITIVE_INFINITY;
        for (int n = 2; n <= 100_000; n *= 3) {
            double k = ToleranceFactor.twoSided(n, content, 0.95);
            assertTrue(k < last, "n " + n);
            last = k;
        }
        double limit = StandardNormal.quantile((1 + content) / 2);
        assertTrue(last > limit && last < 1.01 * limit);
    }

    @Test
    void growsWithContentAndWithConfidence() {
        double last = 0;
        for (double share : new double[] {1e-6, 0.01, 0.3, 0.5, 0.7, 0.99, 0.999999}) {
            double k = ToleranceFactor.twoSided(6, share, 0.95);
            assertTrue(k > last);
            last = k;
        }
        last = 0;
        for (double share : new double[] {1e-6, 0.01, 0.3, 0.5, 0.7, 0.99, 0.999999}) {
            double k = ToleranceFactor.twoSided(6, 0.9, share);
            assertTrue(k > last);
            last = k;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 0, -3})
    void refusesTooSmallASample(int n) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.twoSided(n, 0.9, 0.95));
        assertEquals("n is " + n + "; it must be 2 or more", refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.5, Double.NaN})
    void refusesSharesThatAreNotBetweenZeroAndOne(double share) {
        String range = " is " + share + "; it must be between 0 and 1, ends excluded";
        assertEquals(
                "content" + range,
                assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.twoSided(9, share, 0.95))
                        .getMessage());
        assertEquals(
                "confidence" + range,
                assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.twoSided(9, 0.9, share))
                        .getMessage());
    }

    /** A one-sided tolerance factor is the upper limit of a normal quantile: R 4.2.2, by numerical integration. */
    @ParameterizedTest
    @MethodSource("integratedByR")
    void limitsANormalQuantileAsOneSidedFactorsDo(JsonNode row) {
        NormalEdge edge = new NormalEdge(n(row), StandardNormal.quantile(number(row, "content")));
        assertRelative(number(row, "k1_exact"), edge.factor(number(row, "confidence")));
    }

    /** mpmath, another integral, over the mean; both sides, small samples. */
    @ParameterizedTest
    @MethodSource("edgesIntegratedToManyDigits")
    void limitsANormalQuantileOnEitherSide(JsonNode row) {
        double a = new NormalEdge(n(row), number(row, "k")).factor(number(row, "confidence"));
        assertRelative(number(row, "a"), a);
    }

    private static int n(JsonNode row) {
        return row.get("n").asInt();
    }

    private static double number(JsonNode row, String name) {
        return row.get(name).asDouble();
    }

    private static void assertRelative(double expected, double actual) {
        assertEquals(expected, actual, TOLERANCE * Math.abs(expected));
    }
}
