package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.quantity.Interval;

class OrderStatisticIntervalTest {

    /** By hand: 1 - 2 x (C(n, 0) + ... + C(n, l - 1)) / 2^n. */
    @ParameterizedTest
    @CsvSource({"6, 1, 62, 64", "8, 1, 254, 256", "9, 2, 492, 512", "10, 2, 1002, 1024", "11, 2, 2024, 2048"})
    void ofTheMedianHasTheRanksFoundByHand(int n, int lower, double inside, double all) {
        OrderStatisticInterval found = OrderStatisticInterval.of(ranks(n), 0.5, 0.95);
        assertEquals(OptionalInt.of(lower), found.lowerRank());
        assertEquals(OptionalInt.of(n + 1 - lower), found.upperRank());
        assertEquals(new Interval(lower, n + 1 - lower), found.interval());
        assertEquals(inside / all, found.achievedConfidence(), 1e-14);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 5})
    void ofTheMedianIsOpenBelowSixValues(int n) {
        OrderStatisticInterval found = OrderStatisticInterval.of(ranks(n), 0.5, 0.95);
        assertEquals(new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), found.interval());
        assertEquals(OptionalInt.empty(), found.lowerRank());
        assertEquals(OptionalInt.empty(), found.upperRank());
        assertEquals(1, found.achievedConfidence());
    }

    /** 0.95^71 = 0.0262 is more than 2.5 %, 0.95^72 = 0.0249 is not. */
    @Test
    void ofTheFivePercentQuantileIsOpenBelowUpToSeventyOneValues() {
        assertEquals(
                OptionalInt.empty(),
                OrderStatisticInterval.of(ranks(71), 0.05, 0.95).lowerRank());
        assertEquals(
                OptionalInt.of(1),
                OrderStatisticInterval.of(ranks(72), 0.05, 0.95).lowerRank());
        assertEquals(
                OptionalInt.empty(),
                OrderStatisticInterval.of(ranks(71), 0.95, 0.95).upperRank());
        assertEquals(
                OptionalInt.of(72),
                OrderStatisticInterval.of(ranks(72), 0.95, 0.95).upperRank());
    }

    /** Each side leaves out at most half of what the confidence leaves, and the next rank would leave out more. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.95", "0.1, 0.9", "0.25, 0.95", "0.5, 0.5", "0.9, 0.99", "0.95, 0.95"})
    void leavesOutAsMuchAsItMay(double p, double confidence) {
        double left = (1 - confidence) / 2;
        for (int n = 1; n <= 60; n++) {
            OrderStatisticInterval found = OrderStatisticInterval.of(ranks(n), p, confidence);
            int lower = found.lowerRank().orElse(0);
            int upper = found.upperRank().orElse(n + 1);
            assertTrue(atMost(n, p, lower - 1) <= left && atMost(n, p, lower) > left, "n " + n);
            assertTrue(1 - atMost(n, p, upper - 1) <= left + 1e-15 && 1 - atMost(n, p, upper - 2) > left, "n " + n);
            assertEquals(
                    atMost(n, p, upper - 1) - atMost(n, p, lower - 1), found.achievedConfidence(), 1e-13, "n " + n);
            assertTrue(found.achievedConfidence() >= confidence);
        }
    }

    /** P(B at most k) summed term by term. */
    private static double atMost(int n, double p, int k) {
        double term = Math.pow(1 - p, n);
        double sum = 0;
        for (int i = 0; i <= k; i++) {
            sum += term;
            term *= (n - i) * p / ((i + 1) * (1 - p));
        }
        return sum;
    }

    @ParameterizedTest
    @EnumSource(QuantileType.class)
    void holdsTheQuantileOfTheSampleWhateverItsType(QuantileType type) {
        for (int n = 3; n <= 150; n++) {
            SortedColumn column = ranks(n);
            for (int percent = 0; percent <= 100; percent++) {
                double p = percent / 100.0;
                Interval interval = OrderStatisticInterval.of(column, p, 0.95).interval();
                assertTrue(interval.contains(column.quantile(p, type)), "n " + n + " p " + p);
            }
        }
    }

    @Test
    void ofTheEndsOfThePopulationIsOpenBeyondTheSample() {
        assertEquals(
                new Interval(Double.NEGATIVE_INFINITY, 1),
                OrderStatisticInterval.of(ranks(9), 0, 0.95).interval());
        assertEquals(
                new Interval(9, Double.POSITIVE_INFINITY),
                OrderStatisticInterval.of(ranks(9), 1, 0.95).interval());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void refusesShareOutsideZeroToOne(double p) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> OrderStatisticInterval.of(ranks(9), p, 0.95));
        assertTrue(refusal.getMessage().contains("p is " + p));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, Double.NaN})
    void refusesConfidenceNotBetweenZeroAndOne(double confidence) {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> OrderStatisticInterval.of(ranks(9), 0.5, confidence));
        assertTrue(refusal.getMessage().contains("confidence is " + confidence));
    }

    private static SortedColumn ranks(int n) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> i + 1);
        return SortedColumn.of(values);
    }
}
