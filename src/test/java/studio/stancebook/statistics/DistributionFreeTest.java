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

class DistributionFreeTest {

    static Stream<JsonNode> sampleSizes() {
        return rows("first_order");
    }

    static Stream<JsonNode> higherOrders() {
        return rows("one_sided_95_95_by_order_m");
    }

    private static Stream<JsonNode> rows(String name) {
        return StreamSupport.stream(
                ReferenceFile.json("wilks_sample_sizes.json").get(name).spliterator(), false);
    }

    @ParameterizedTest
    @MethodSource("sampleSizes")
    void needsTheSampleSizesOfWilks(JsonNode row) {
        double content = row.get("content").asDouble();
        double confidence = row.get("confidence").asDouble();
        assertEquals(
                row.get("n_one_sided_min_or_max").asLong(),
                DistributionFree.neededN(DistributionFree.ONE_SIDED, content, confidence));
        int twoSided = row.get("n_two_sided_min_max").asInt();
        assertEquals(twoSided, DistributionFree.neededN(DistributionFree.TWO_SIDED, content, confidence));
        assertEquals(1, DistributionFree.lowerRank(twoSided, content, confidence));
        assertEquals(0, DistributionFree.lowerRank(twoSided - 1, content, confidence));
    }

    @ParameterizedTest
    @MethodSource("higherOrders")
    void needsMoreForInnerValues(JsonNode row) {
        assertEquals(
                row.get("n").asLong(), DistributionFree.neededN(row.get("order").asInt(), 0.95, 0.95));
    }

    /** Closed form for the smallest and the largest value: 1 - n P^(n - 1) + (n - 1) P^n. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 10, 93, 400})
    void hasTheConfidenceOfTheClosedForm(int n) {
        double p = 0.95;
        double expected = 1 - n * Math.pow(p, n - 1) + (n - 1) * Math.pow(p, n);
        assertEquals(expected, DistributionFree.confidence(n, DistributionFree.TWO_SIDED, p), 1e-13);
        assertEquals(1 - Math.pow(p, n), DistributionFree.confidence(n, DistributionFree.ONE_SIDED, p), 1e-13);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.9", "0.8, 0.95", "0.9, 0.95", "0.1, 0.99"})
    void findsTheNarrowestIntervalThatWillDo(double content, double confidence) {
        for (int n = 1; n <= 200; n++) {
            int rank = DistributionFree.lowerRank(n, content, confidence);
            assertTrue(2 * rank <= n);
            assertTrue(rank == 0 || DistributionFree.confidence(n, 2 * rank, content) >= confidence, "n " + n);
            int next = 2 * (rank + 1);
            assertTrue(next > n || DistributionFree.confidence(n, next, content) < confidence, "n " + n);
        }
    }

    @Test
    void countsBeyondTheWholeNumbersOfAnInt() {
        long n = DistributionFree.neededN(DistributionFree.ONE_SIDED, 1 - 1e-10, 0.95);
        assertEquals(Math.log(0.05) / Math.log1p(-1e-10), n, 1e-6 * n);
    }

    @Test
    void needsTwoValuesAtLeastForTwoSides() {
        assertEquals(2, DistributionFree.neededN(DistributionFree.TWO_SIDED, 1e-9, 1e-9));
        assertEquals(0, DistributionFree.lowerRank(1, 1e-9, 1e-9));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 10})
    void refusesGapsThatASampleHasNot(int gaps) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> DistributionFree.confidence(9, gaps, 0.9));
        assertEquals("gapsOutside is " + gaps + "; it must be from 1 to 9", refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, Double.NaN})
    void refusesSharesThatAreNotBetweenZeroAndOne(double share) {
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.confidence(9, 1, share));
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.lowerRank(9, share, 0.9));
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.lowerRank(9, 0.9, share));
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.neededN(1, share, 0.9));
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.neededN(1, 0.9, share));
    }

    @Test
    void refusesAnEmptySample() {
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.lowerRank(0, 0.9, 0.9));
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.confidence(0, 1, 0.9));
        assertThrows(IllegalArgumentException.class, () -> DistributionFree.neededN(0, 0.9, 0.9));
    }
}
