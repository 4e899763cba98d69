package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import studio.stancebook.quantity.Interval;

class BandCalculatorTest {

    private static final BandMethod.Rule RULE = new BandMethod.Rule(3.4, 3.7, "house rule");
    private static final BandMethod.Percentile PERCENTILE = new BandMethod.Percentile(0.1, 0.9, QuantileType.TYPE_7);
    private static final BandMethod.Tolerance TOLERANCE = new BandMethod.Tolerance(0.9, 0.95);
    private static final BandMethod.DistributionFree FREE = new BandMethod.DistributionFree(0.5, 0.5);
    private static final BandMethod.Robust ROBUST = new BandMethod.Robust(2.5);

    static Stream<BandMethod> computedMethods() {
        return Stream.of(PERCENTILE, TOLERANCE, FREE, ROBUST);
    }

    @Test
    void knowsEveryMethodThereIs() {
        Set<Class<?>> tried = Stream.concat(Stream.of(RULE), computedMethods())
                .map(BandMethod::getClass)
                .collect(Collectors.toSet());
        assertEquals(Set.of(BandMethod.class.getPermittedSubclasses()), tried);
    }

    @Test
    void takesARuleAsTypedWhateverTheClass() {
        for (SortedColumn column : List.of(SortedColumn.empty(), SortedColumn.of(9, 9, 9), spread(50))) {
            BandEdges band = edges(RULE, column);
            assertEquals(new Interval(3.4, 3.7), band.interval());
            assertEquals(column.n(), band.n());
            assertEquals(false, band.provisional());
            assertEquals(Optional.empty(), band.lowerInterval());
            assertEquals(Optional.empty(), band.upperInterval());
            assertEquals(new BandBasis.Typed("house rule"), band.basis());
        }
    }

    @Test
    void leavesTheOtherSideOfAOneSidedRuleOpen() {
        BandEdges band = edges(BandMethod.Rule.of(null, 30.0, "house rule"), SortedColumn.empty());
        assertEquals(new Interval(Double.NEGATIVE_INFINITY, 30), band.interval());
    }

    @ParameterizedTest
    @MethodSource("computedMethods")
    void computesNothingBelowThreeValues(BandMethod method) {
        for (SortedColumn column : List.of(SortedColumn.empty(), SortedColumn.of(1), SortedColumn.of(1, 2))) {
            NoBandPossible none = none(method, column);
            assertEquals(NoBandPossible.Reason.TOO_FEW_VALUES, none.reason());
            assertEquals(column.n(), none.n());
            assertEquals(OptionalLong.of(3), none.neededN());
        }
    }

    @ParameterizedTest
    @MethodSource("computedMethods")
    void marksABandFromFewerThanEightValuesProvisional(BandMethod method) {
        assertTrue(edges(method, spread(3)).provisional());
        assertTrue(edges(method, spread(7)).provisional());
        assertEquals(false, edges(method, spread(8)).provisional());
    }

    @ParameterizedTest
    @MethodSource("computedMethods")
    void givesNoBandWithoutWidth(BandMethod method) {
        NoBandPossible none = none(method, SortedColumn.of(4.1, 4.1, 4.1, 4.1));
        assertEquals(NoBandPossible.Reason.NO_SPREAD, none.reason());
        assertEquals("no-spread", none.reason().key());
        assertEquals(OptionalLong.empty(), none.neededN());
    }

    @ParameterizedTest
    @MethodSource("computedMethods")
    void putsEachEdgeInsideItsInterval(BandMethod method) {
        for (int n = 3; n < 120; n += 4) {
            BandEdges band = edges(method, spread(n));
            assertTrue(band.lowerInterval().map(i -> i.contains(band.lower())).orElse(true), "n " + n);
            assertTrue(band.upperInterval().map(i -> i.contains(band.upper())).orElse(true), "n " + n);
        }
    }

    @ParameterizedTest
    @MethodSource("computedMethods")
    void givesTheSameAnswerTwiceAndWhateverTheOrder(BandMethod method) {
        double[] values = spread(40).toArray();
        BandOutcome first = BandCalculator.compute(method, SortedColumn.of(values));
        assertEquals(first, BandCalculator.compute(method, SortedColumn.of(values)));
        double[] reversed = new double[values.length];
        Arrays.setAll(reversed, i -> values[values.length - 1 - i]);
        assertEquals(first, BandCalculator.compute(method, SortedColumn.of(reversed)));
    }

    @ParameterizedTest
    @MethodSource("computedMethods")
    void movesAndScalesWithTheClass(BandMethod method) {
        for (int n : new int[] {3, 8, 31, 100}) {
            double[] values = spread(n).toArray();
            BandEdges before = edges(method, SortedColumn.of(values));
            BandEdges after = edges(
                    method,
                    SortedColumn.of(
                            Arrays.stream(values).map(x -> 25.4 * x - 90).toArray()));
            List<Double> expected =
                    figures(before).stream().map(x -> 25.4 * x - 90).toList();
            for (int i = 0; i < expected.size(); i++) {
                assertClose(expected.get(i), figures(after).get(i));
            }
        }
    }

    private static void assertClose(double expected, double actual) {
        if (Double.isInfinite(expected)) {
            assertEquals(expected, actual);
        } else {
            assertEquals(expected, actual, 1e-10 * (90 + Math.abs(expected)));
        }
    }

    private static List<Double> figures(BandEdges band) {
        return Stream.concat(
                        Stream.of(band.lower(), band.upper()),
                        Stream.of(band.lowerInterval(), band.upperInterval())
                                .flatMap(Optional::stream)
                                .flatMap(i -> Stream.of(i.lower(), i.upper())))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("computedMethods")
    void mirrorsItsEdgesWithTheClass(BandMethod method) {
        for (int n : new int[] {3, 8, 31, 100}) {
            double[] values = spread(n).toArray();
            BandEdges before = edges(method, SortedColumn.of(values));
            BandEdges after = edges(
                    method, SortedColumn.of(Arrays.stream(values).map(x -> -x).toArray()));
            assertEquals(-before.upper(), after.lower(), 1e-12);
            assertEquals(-before.lower(), after.upper(), 1e-12);
        }
    }

    @Test
    void readsAPercentileBandFromTheClassWithRanks() {
        BandEdges band = edges(new BandMethod.Percentile(0.25, 0.75, QuantileType.TYPE_6), oneTo(20));
        assertEquals(5.25, band.lower(), 1e-14);
        assertEquals(15.75, band.upper(), 1e-14);
        BandBasis.FromQuantiles basis = assertInstanceOf(BandBasis.FromQuantiles.class, band.basis());
        assertEquals(QuantileType.TYPE_6, basis.type());
        assertEquals(OptionalInt.of(2), basis.lower().lowerRank());
        assertEquals(Optional.of(basis.lower().interval()), band.lowerInterval());
        assertEquals(Optional.of(basis.upper().interval()), band.upperInterval());
    }

    @Test
    void leavesTheOuterSideOfAnEdgeOpenWhereTheClassIsTooSmallToSay() {
        BandEdges band = edges(new BandMethod.Percentile(0.05, 0.95, QuantileType.TYPE_7), oneTo(20));
        assertEquals(
                Double.NEGATIVE_INFINITY, band.lowerInterval().orElseThrow().lower());
        assertEquals(4, band.lowerInterval().orElseThrow().upper());
        assertEquals(17, band.upperInterval().orElseThrow().lower());
        assertEquals(
                Double.POSITIVE_INFINITY, band.upperInterval().orElseThrow().upper());
    }

    @Test
    void givesNoIntervalOpenOnBothSides() {
        BandEdges band = edges(new BandMethod.Percentile(0.5, 1, QuantileType.TYPE_7), oneTo(5));
        assertEquals(Optional.empty(), band.lowerInterval());
        assertEquals(Optional.of(new Interval(5, Double.POSITIVE_INFINITY)), band.upperInterval());
    }

    /** NIST/SEMATECH e-Handbook 7.2.6.3: n = 43, mean 97.07, standard deviation 0.0268, 90 % at 99 %; k exact by R. */
    @Test
    void makesTheToleranceIntervalOfTheHandbook() {
        SortedColumn column = withMeanAndDeviation(43, 97.07, 0.0268);
        BandEdges band = edges(new BandMethod.Tolerance(0.9, 0.99), column);
        assertEquals(97.07 - 2.222825174 * 0.0268, band.lower(), 1e-10);
        assertEquals(97.07 + 2.222825174 * 0.0268, band.upper(), 1e-10);
        BandBasis.FromMean basis = assertInstanceOf(BandBasis.FromMean.class, band.basis());
        assertEquals(2.222825174, basis.factor(), 1e-9);
        assertEquals(0.0268, basis.standardDeviation(), 1e-12);
    }

    /** n values of the mean and standard deviation wanted: half of them at either side, one in the middle. */
    private static SortedColumn withMeanAndDeviation(int n, double mean, double sd) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> mean + Integer.signum(2 * i + 1 - n) * sd);
        return SortedColumn.of(values);
    }

    @Test
    void takesADistributionFreeBandFromTwoValuesOfTheClass() {
        BandEdges band = edges(new BandMethod.DistributionFree(0.95, 0.95), oneTo(93));
        assertEquals(new Interval(1, 93), band.interval());
        BandBasis.FromRanks basis = assertInstanceOf(BandBasis.FromRanks.class, band.basis());
        assertEquals(1, basis.lowerRank());
        assertEquals(93, basis.upperRank());
        assertEquals(0.95, basis.achievedConfidence(), 0.0011);
        assertTrue(basis.achievedConfidence() >= 0.95);
    }

    @Test
    void saysHowManyValuesADistributionFreeBandNeeds() {
        NoBandPossible none = none(new BandMethod.DistributionFree(0.95, 0.95), oneTo(92));
        assertEquals(NoBandPossible.Reason.TOO_FEW_FOR_CONFIDENCE, none.reason());
        assertEquals(92, none.n());
        assertEquals(OptionalLong.of(93), none.neededN());
        assertEquals(
                OptionalLong.of(93),
                none(new BandMethod.DistributionFree(0.95, 0.95), oneTo(2)).neededN());
    }

    @Test
    void makesARobustBandByHand() {
        BandEdges band = edges(new BandMethod.Robust(2), SortedColumn.of(1, 2, 3, 4, 100));
        assertEquals(3 - 2 * 1.4826, band.lower(), 1e-14);
        assertEquals(3 + 2 * 1.4826, band.upper(), 1e-14);
        assertEquals(new BandBasis.FromMedian(3, 1), band.basis());
    }

    @Test
    void givesNoRobustBandWhereMoreThanHalfOfTheClassIsEqual() {
        SortedColumn column = SortedColumn.of(5, 5, 5, 5, 9, 3, 4);
        assertEquals(NoBandPossible.Reason.NO_SPREAD, none(ROBUST, column).reason());
        assertTrue(edges(PERCENTILE, column).upper() > 5);
    }

    @Test
    void givesNoIntervalOfARobustEdgeForAProvisionalClass() {
        assertEquals(Optional.empty(), edges(ROBUST, spread(7)).lowerInterval());
        assertTrue(edges(ROBUST, spread(8)).lowerInterval().isPresent());
        assertTrue(edges(ROBUST, spread(8)).upperInterval().isPresent());
    }

    /** Normal data of a fixed seed: the interval should hold the edge of the population about 95 times of 100. */
    @Test
    void holdsTheTrueEdgeAboutAsOftenAsItSays() {
        int n = 15;
        Random random = new Random(7);
        double robustEdge = 2.5 * 1.4826 * StandardNormal.quantile(0.75);
        int robust = 0;
        int percentile = 0;
        int repeats = 400;
        for (int i = 0; i < repeats; i++) {
            SortedColumn column = SortedColumn.of(random.doubles(n)
                    .map(u -> StandardNormal.quantile(Math.max(u, 1e-300)))
                    .toArray());
            robust += edges(ROBUST, column).upperInterval().orElseThrow().contains(robustEdge) ? 1 : 0;
            BandEdges quantiles = edges(new BandMethod.Percentile(0.3, 0.7, QuantileType.TYPE_7), column);
            double edge = StandardNormal.quantile(0.7);
            percentile += quantiles.upperInterval().orElseThrow().contains(edge) ? 1 : 0;
        }
        assertEquals(0.96, (double) robust / repeats, 0.04);
        assertEquals(0.96, (double) percentile / repeats, 0.04);
    }

    /** The interval of a tolerance edge is that of mu + k sigma, with k as in the band. */
    @Test
    void holdsTheTrueToleranceEdgeAboutAsOftenAsItSays() {
        Random random = new Random(8);
        int held = 0;
        int repeats = 400;
        double k = ToleranceFactor.twoSided(5, 0.9, 0.95);
        for (int i = 0; i < repeats; i++) {
            double[] values = new double[5];
            Arrays.setAll(values, j -> random.nextGaussian());
            BandEdges band = edges(TOLERANCE, SortedColumn.of(values));
            held += band.upperInterval().orElseThrow().contains(k) ? 1 : 0;
        }
        assertEquals(0.95, (double) held / repeats, 0.03);
    }

    private static BandEdges edges(BandMethod method, SortedColumn column) {
        return assertInstanceOf(BandEdges.class, BandCalculator.compute(method, column));
    }

    private static NoBandPossible none(BandMethod method, SortedColumn column) {
        return assertInstanceOf(NoBandPossible.class, BandCalculator.compute(method, column));
    }

    private static SortedColumn oneTo(int n) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> i + 1);
        return SortedColumn.of(values);
    }

    /** n different values of a fixed seed. */
    private static SortedColumn spread(int n) {
        return SortedColumn.of(new Random(n).doubles(n, 3, 5).toArray());
    }
}
