package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SortedColumnTest {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1.0000001e100, -1.1e100})
    void refusesWhatIsNoNumberNamingIndexAndValue(double value) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> SortedColumn.of(1, 2, value));
        assertTrue(refusal.getMessage().startsWith("values[2] is " + value));
        assertThrows(IllegalArgumentException.class, () -> SortedColumn.of(1).with(value));
    }

    @Test
    void takesTheLargestMagnitudesThatItSays() {
        SortedColumn column = SortedColumn.of(-1e100, 1e100);
        assertEquals(0, column.mean());
        assertEquals(Math.sqrt(2) * 1e100, column.standardDeviation().orElseThrow(), 1e86);
    }

    @Test
    void leavesTheCallersArrayAlone() {
        double[] values = {3, 1, 2};
        SortedColumn column = SortedColumn.of(values);
        values[0] = 99;
        column.toArray()[0] = 99;
        assertArrayEquals(new double[] {99, 1, 2}, values);
        assertArrayEquals(new double[] {1, 2, 3}, column.toArray());
    }

    @Test
    void countsFromRankOne() {
        SortedColumn column = SortedColumn.of(30, 10, 20);
        assertEquals(10, column.ofRank(1));
        assertEquals(30, column.ofRank(3));
        assertThrows(IllegalArgumentException.class, () -> column.ofRank(0));
        assertThrows(IllegalArgumentException.class, () -> column.ofRank(4));
    }

    @Test
    void countsValuesBelowAndAtMost() {
        SortedColumn column = SortedColumn.of(1, 2, 2, 2, 5);
        assertEquals(1, column.countBelow(2));
        assertEquals(4, column.countAtMost(2));
        assertEquals(0, column.countBelow(-7));
        assertEquals(5, column.countAtMost(Double.POSITIVE_INFINITY));
        assertEquals(0, SortedColumn.empty().countAtMost(0));
    }

    @Test
    void ofNoValuesHasNoFigures() {
        SortedColumn none = SortedColumn.empty();
        assertTrue(none.isEmpty());
        assertEquals(OptionalDouble.empty(), none.standardDeviation());
        assertThrows(IllegalStateException.class, none::mean);
        assertThrows(IllegalStateException.class, none::min);
        assertThrows(IllegalStateException.class, none::max);
        assertThrows(IllegalStateException.class, none::median);
        assertThrows(IllegalStateException.class, none::medianAbsoluteDeviation);
        assertThrows(IllegalStateException.class, none::meanAbsoluteDeviation);
        assertEquals(none, SortedColumn.of());
    }

    @Test
    void ofEqualValuesHasExactlyNoSpread() {
        SortedColumn column = SortedColumn.of(0.1, 0.1, 0.1);
        for (SortedColumn equal : List.of(column, column.with(7).without(7), column.with(0.1))) {
            assertEquals(0.1, equal.mean());
            assertEquals(0, equal.standardDeviation().orElseThrow());
            assertEquals(0, equal.medianAbsoluteDeviation());
            assertEquals(0, equal.meanAbsoluteDeviation());
        }
    }

    @Test
    void findsZeroWhateverItsSign() {
        assertEquals(SortedColumn.of(1), SortedColumn.of(-0.0, 1).without(0.0));
        assertEquals(SortedColumn.of(1), SortedColumn.of(0.0, 1).without(-0.0));
        assertEquals(SortedColumn.of(0.0), SortedColumn.of(-0.0));
    }

    @Test
    void takesOneOfEqualValuesAway() {
        assertEquals(SortedColumn.of(2, 3), SortedColumn.of(2, 3, 2).without(2));
        assertEquals(SortedColumn.empty(), SortedColumn.of(2).without(2));
        assertEquals(SortedColumn.of(2), SortedColumn.empty().with(2));
    }

    @Test
    void exchangesOneValueForAnother() {
        Random random = new Random(5);
        for (int n = 1; n < 40; n++) {
            double[] values = random.ints(n, -9, 9).asDoubleStream().toArray();
            SortedColumn column = SortedColumn.of(values);
            for (double come = -10; come <= 10; come += 0.5) {
                double gone = values[0];
                values[0] = come;
                column = column.exchanged(gone, come);
                assertSameFigures(SortedColumn.of(values), column);
            }
        }
        assertThrows(IllegalArgumentException.class, () -> SortedColumn.of(1, 2).exchanged(3, 1));
        assertThrows(IllegalArgumentException.class, () -> SortedColumn.of(1, 2).exchanged(1, Double.NaN));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, -1, 9, Double.NaN})
    void refusesToTakeAwayWhatIsNotThere(double value) {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> SortedColumn.of(1, 2).without(value));
        assertTrue(refusal.getMessage().contains(Double.toString(value)));
        assertThrows(IllegalArgumentException.class, () -> SortedColumn.empty().without(value));
    }

    @Test
    void isTheSameInEveryFigureWhateverTheOrderOfTheValues() {
        Random random = new Random(1);
        for (int n = 1; n < 60; n++) {
            List<Double> values =
                    new ArrayList<>(random.doubles(n, -1, 1).boxed().toList());
            Summary expected = columnOf(values).summary();
            Collections.shuffle(values, random);
            assertEquals(expected, columnOf(values).summary());
        }
    }

    @Test
    void reachedInStepsHasTheFiguresOfTheWhole() {
        Random random = new Random(2);
        SortedColumn column = SortedColumn.empty();
        List<Double> values = new ArrayList<>();
        for (int step = 0; step < 3000; step++) {
            if (values.isEmpty() || random.nextInt(5) > 1) {
                double value = Math.rint(1e4 * random.nextGaussian()) / 64;
                values.add(value);
                column = column.with(value);
            } else {
                column = column.without(values.remove(random.nextInt(values.size())));
            }
            assertSameFigures(columnOf(values), column);
        }
        assertTrue(values.size() > 300);
    }

    @Test
    void keepsItsAccuracyWhenFarGreaterValuesHaveComeAndGone() {
        double[] near = {1.001, 1.002, 1.004};
        SortedColumn column = SortedColumn.of(1e40, -3e41);
        for (double value : near) {
            column = column.with(value);
        }
        assertSameFigures(SortedColumn.of(near), column.without(1e40).without(-3e41));
    }

    @Test
    void hasTheMedianDeviationOfTheLongWay() {
        Random random = new Random(3);
        for (int n = 1; n <= 200; n++) {
            int levels = 1 + random.nextInt(3 * n);
            double[] values =
                    random.ints(n, 0, levels).mapToDouble(i -> i * 0.1 - 7).toArray();
            assertEquals(longWay(values), SortedColumn.of(values).medianAbsoluteDeviation(), "n " + n);
        }
    }

    @Test
    void hasTheMedianDeviationOfTheLongWayForLopsidedValues() {
        Random random = new Random(4);
        for (int n = 1; n <= 200; n++) {
            double[] values = random.doubles(n).map(u -> Math.exp(8 * u)).toArray();
            assertEquals(longWay(values), SortedColumn.of(values).medianAbsoluteDeviation(), "n " + n);
            double[] mirrored = Arrays.stream(values).map(x -> -x).toArray();
            assertEquals(longWay(mirrored), SortedColumn.of(mirrored).medianAbsoluteDeviation(), "n " + n);
        }
    }

    @Test
    void hasTheMeanDeviationByHand() {
        assertEquals(0.8, SortedColumn.of(5, 5, 5, 5, 9).meanAbsoluteDeviation(), 1e-15);
    }

    @Test
    void equalsAColumnOfTheSameValuesOnly() {
        assertEquals(SortedColumn.of(1, 2).hashCode(), SortedColumn.of(2, 1).hashCode());
        assertNotEquals(SortedColumn.of(1, 2), SortedColumn.of(1, 2, 2));
        assertEquals("SortedColumn[1.0, 2.0]", SortedColumn.of(2, 1).toString());
    }

    private static double longWay(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double median = Quantiles.of(sorted, 0.5, QuantileType.TYPE_7);
        double[] deviations =
                Arrays.stream(sorted).map(x -> Math.abs(x - median)).sorted().toArray();
        return Quantiles.of(deviations, 0.5, QuantileType.TYPE_7);
    }

    private static void assertSameFigures(SortedColumn expected, SortedColumn actual) {
        assertEquals(expected, actual);
        if (expected.isEmpty()) {
            return;
        }
        assertEquals(expected.mean(), actual.mean(), 1e-13 * Math.abs(expected.mean()));
        assertEquals(
                expected.standardDeviation().orElse(-1),
                actual.standardDeviation().orElse(-1),
                1e-13 * expected.standardDeviation().orElse(0));
    }

    private static SortedColumn columnOf(List<Double> values) {
        return SortedColumn.of(values.stream().mapToDouble(x -> x).toArray());
    }
}
