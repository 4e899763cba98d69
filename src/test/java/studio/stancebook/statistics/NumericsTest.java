package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hipparchus.analysis.UnivariateFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The numerical parts beneath the statistics. */
class NumericsTest {

    @Test
    void integratesPolynomialsExactly() {
        assertEquals((Math.pow(3, 8) - 1) / 8, Numerics.integral(x -> Math.pow(x, 7), -1, 3), 1e-10);
        assertEquals(28.0 / 3, Numerics.integral(x -> x * x, -1, 3), 1e-13);
        assertEquals(0, Numerics.integral(x -> x, 2, 2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-4, 0.3, 11, 2})
    void findsARootFromWhereverItStarts(double start) {
        assertEquals(2, Numerics.rootNear(x -> x * x * x - 8, start, 0.01), 1e-15);
    }

    @Test
    void findsARootWhereTheSlopeLeadsAstray() {
        assertEquals(5, Numerics.root(x -> Math.atan(x - 5), -100, 100), 1e-14);
        assertEquals(0.7, Numerics.root(x -> x < 0.7 ? -1 : 1, 0, 1), 1e-15);
    }

    /** As where a share of all values is asked for that the last digit of a sum cannot tell. */
    @Test
    void takesAnEndWhereRoundingHidesTheChangeOfSign() {
        UnivariateFunction never = x -> x + 1e-20;
        assertEquals(0, Numerics.root(never, 0, 1));
        assertEquals(1, Numerics.root(x -> x - 1 - 1e-15, 0, 1));
    }

    /**
     * The first numbers of SplitMix64 for the seed 1234567, as published with S. Vigna's splitmix64.c at
     * prng.di.unimi.it (from memory): bands keep their intervals whatever Java they run on.
     */
    @Test
    void drawsTheSequenceOfSplitMix64() {
        SplittableRandom random = new SplittableRandom(1234567);
        assertEquals(6457827717110365317L, random.nextLong());
        assertEquals(3203168211198807973L, random.nextLong());
        assertEquals(0x883e_bce5_a3f2_7c77L, random.nextLong());
    }

    @Test
    void drawsEveryNumberAboutEquallyOften() {
        int[] times = new int[7];
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 70_000; i++) {
            times[RobustEdges.below(7, random.nextLong())]++;
        }
        double chiSquared = 0;
        for (int count : times) {
            chiSquared += (count - 10_000.0) * (count - 10_000.0) / 10_000;
        }
        assertTrue(chiSquared < 22.5, "beyond the 99.9 % point of chi-square with 6 degrees: " + chiSquared);
    }
}
