package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.statistics.descriptive.Quantile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class QuantilesTest {

    static Stream<JsonNode> vectors() {
        return StreamSupport.stream(
                ReferenceFile.json("quantiles_reference.json").get("vectors").spliterator(), false);
    }

    /** R 4.2.2, quantile(); twelve digits. */
    @ParameterizedTest
    @MethodSource("vectors")
    void equalThoseOfR(JsonNode vector) {
        SortedColumn column = SortedColumn.of(ReferenceFile.doubles(vector.get("x")));
        double[] p = ReferenceFile.doubles(vector.get("p"));
        for (QuantileType type : QuantileType.values()) {
            double[] expected = ReferenceFile.doubles(vector.get("types").get("type" + type.number()));
            for (int i = 0; i < p.length; i++) {
                assertEquals(
                        expected[i], column.quantile(p[i], type), 1e-10, vector.get("name") + " " + type + " " + p[i]);
            }
        }
    }

    /** NIST/SEMATECH e-Handbook 7.2.6.2 prints 95.1981 (printed value from memory). */
    @Test
    void equalTheHandbookExample() {
        double[] gauge =
                ReferenceFile.doubles(vectors().findFirst().orElseThrow().get("x"));
        assertEquals(95.1981, SortedColumn.of(gauge).quantile(0.9, QuantileType.TYPE_6), 5e-5);
    }

    @ParameterizedTest
    @EnumSource(QuantileType.class)
    void equalThoseOfAnotherLibrary(QuantileType type) {
        Quantile peer =
                Quantile.withDefaults().withCopy(true).with(Quantile.EstimationMethod.valueOf("HF" + type.number()));
        Random random = new Random(20);
        for (int n = 1; n <= 60; n++) {
            double[] values = random.doubles(n, -5, 9).toArray();
            SortedColumn column = SortedColumn.of(values);
            for (double p = 0; p <= 1; p += 1.0 / 64) {
                assertEquals(peer.evaluate(values, p), column.quantile(p, type), 1e-12, "n " + n + " p " + p);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(QuantileType.class)
    void endAtTheSmallestAndLargestValue(QuantileType type) {
        double[] sorted = {1.5, 2.5, 7};
        assertEquals(1.5, Quantiles.of(sorted, 0, type));
        assertEquals(7, Quantiles.of(sorted, 1, type));
    }

    @ParameterizedTest
    @EnumSource(QuantileType.class)
    void ofOneValueAreThatValue(QuantileType type) {
        for (double p : new double[] {0, 0.05, 0.5, 1}) {
            assertEquals(3.25, Quantiles.of(new double[] {3.25}, p, type));
        }
    }

    @ParameterizedTest
    @EnumSource(QuantileType.class)
    void haveTheMedianExactlyInTheMiddle(QuantileType type) {
        for (int n = 1; n < 400; n++) {
            double[] ranks = new double[n];
            Arrays.setAll(ranks, i -> i + 1);
            assertEquals((n + 1) / 2.0, Quantiles.of(ranks, 0.5, type));
        }
    }

    @ParameterizedTest
    @EnumSource(QuantileType.class)
    void neverLeaveTheTwoValuesTheyLieBetween(QuantileType type) {
        double[] sorted = {0.1, 0.1, 0.1 + 0.2, 0.3, 1e16, 1e16 + 2};
        double last = sorted[0];
        for (double p = 0; p <= 1; p += 0.0005) {
            double quantile = Quantiles.of(sorted, p, type);
            assertTrue(quantile >= last && quantile <= sorted[5], "p " + p);
            last = quantile;
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-Double.MIN_VALUE, 1.0000000000000002, Double.NaN, Double.POSITIVE_INFINITY})
    void refuseSharesOutsideZeroToOne(double p) {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> Quantiles.of(new double[] {1}, p, QuantileType.TYPE_7));
        assertTrue(refusal.getMessage().contains(Double.toString(p))
                && refusal.getMessage().contains("0 to 1"));
    }

    @Test
    void refuseNoValues() {
        assertThrows(IllegalArgumentException.class, () -> Quantiles.of(new double[0], 0.5, QuantileType.TYPE_7));
    }

    @Test
    void areFoundByTheNumberOfTheirType() {
        assertEquals(QuantileType.TYPE_6, QuantileType.of(6));
        assertEquals(QuantileType.TYPE_7, QuantileType.of(7));
        assertEquals(QuantileType.TYPE_8, QuantileType.of(8));
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 9, 0, -7})
    void refuseOtherTypes(int number) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> QuantileType.of(number));
        assertTrue(refusal.getMessage().contains("is " + number + ";"));
    }
}
