package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checked against the sort of the Java library, which tells -0 from 0 as well. */
class RadixSortTest {

    private static final SplittableRandom RANDOM = new SplittableRandom(20261201);

    private static final int SEVERAL_TIMES = 20;

    static final Arguments[] KINDS = {
        kind("of one class", () -> 2.5 + RANDOM.nextDouble()),
        kind("with one digit after the point", () -> Math.rint(RANDOM.nextDouble() * 30_000) / 10),
        kind("of both signs", () -> RANDOM.nextDouble() - 0.5),
        kind("of any bits", RadixSortTest::ofAnyBits),
        kind("subnormal, of both signs", () -> (RANDOM.nextInt(2001) - 1000) * Double.MIN_VALUE),
        kind("zeros of both signs and few others", () -> new double[] {-1, -0.0, 0.0, 1}[RANDOM.nextInt(4)]),
        kind("all equal", () -> -3.25),
        kind("of the largest magnitudes", () -> Double.MAX_VALUE * (RANDOM.nextInt(3) - 1)),
    };

    private static Arguments kind(String name, DoubleSupplier values) {
        return Arguments.of(Named.of(name, values));
    }

    private static double ofAnyBits() {
        double value = Double.longBitsToDouble(RANDOM.nextLong());
        return Double.isFinite(value) ? value : 0;
    }

    @ParameterizedTest
    @FieldSource("KINDS")
    void sortsAsTheJavaLibraryDoes(DoubleSupplier values) {
        for (int time = 0; time < SEVERAL_TIMES; time++) {
            int n = RANDOM.nextInt(3, 5_000);
            assertSorts(DoubleStream.generate(values).limit(n).toArray());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, RadixSort.WORTH_IT_FROM - 1, RadixSort.WORTH_IT_FROM})
    void sortsAnyNumberOfValues(int n) {
        assertSorts(DoubleStream.generate(RadixSortTest::ofAnyBits).limit(n).toArray());
    }

    @ParameterizedTest
    @FieldSource("KINDS")
    void leavesWhatIsInOrderAndTurnsWhatIsInReverse(DoubleSupplier values) {
        double[] sorted = DoubleStream.generate(values).limit(3_000).sorted().toArray();
        assertSorts(sorted);
        double[] reverse = new double[sorted.length];
        for (int i = 0; i < sorted.length; i++) {
            reverse[i] = sorted[sorted.length - 1 - i];
        }
        assertSorts(reverse);
    }

    private static void assertSorts(double[] values) {
        double[] expected = values.clone();
        Arrays.sort(expected);
        double[] byDigits = values.clone();
        RadixSort.sortByDigits(byDigits);
        assertArrayEquals(expected, byDigits);
        double[] sorted = values.clone();
        RadixSort.sort(sorted);
        assertArrayEquals(expected, sorted);
    }
}
