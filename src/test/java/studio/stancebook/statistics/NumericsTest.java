package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The numerical parts beneath the statistics. */
class NumericsTest {

    @Test
    void integratesPolynomialsExactly() {
        GaussLegendre rule = new GaussLegendre(-1, 3, x -> x * x);
        double[] x = rule.points();
        assertEquals((Math.pow(3, 8) - 1) / 8, rule.sum(i -> Math.pow(x[i], 5)), 1e-10);
        assertEquals(28.0 / 3, rule.sum(i -> 1), 1e-13);
    }

    @Test
    void hasTheNodesAndWeightsOfAnotherLibrary() {
        var peer = new GaussIntegratorFactory().legendre(GaussLegendre.POINTS);
        GaussLegendre rule = new GaussLegendre(-1, 1, x -> 1);
        for (int i = 0; i < GaussLegendre.POINTS; i++) {
            int index = i;
            assertEquals(peer.getPoint(i), rule.points()[i], 1e-15);
            assertEquals(peer.getWeight(i), rule.sum(j -> j == index ? 1 : 0), 1e-15);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-4, 0.3, 11, 2})
    void findsARootFromWhereverItStarts(double start) {
        IncreasingFunction cube = x -> new IncreasingFunction.Point(x * x * x - 8, 3 * x * x);
        assertEquals(2, cube.rootNear(start, 0.01), 1e-15);
    }

    @Test
    void findsARootWhereTheSlopeLeadsAstray() {
        IncreasingFunction flat = x -> new IncreasingFunction.Point(Math.atan(x - 5), 1 / (1 + (x - 5) * (x - 5)));
        assertEquals(5, flat.root(-100, 100, 90), 1e-14);
        IncreasingFunction step = x -> new IncreasingFunction.Point(x < 0.7 ? -1 : 1, 0);
        assertEquals(0.7, step.root(0, 1, 0.5), 1e-15);
    }

    /** The generator of the Java library is the same one. */
    @Test
    void drawsTheSequenceOfTheJavaLibrary() {
        for (long seed : new long[] {0, 1, -7, RobustEdges.SEED}) {
            SplittableRandom peer = new SplittableRandom(seed);
            Draws draws = new Draws(seed);
            for (int i = 0; i < 1000; i++) {
                assertEquals(peer.nextLong(), draws.next());
            }
        }
    }

    @Test
    void drawsEveryNumberAboutEquallyOften() {
        int[] times = new int[7];
        Draws draws = new Draws(3);
        for (int i = 0; i < 70_000; i++) {
            times[draws.below(7)]++;
        }
        double chiSquared = 0;
        for (int count : times) {
            chiSquared += (count - 10_000.0) * (count - 10_000.0) / 10_000;
        }
        assertTrue(chiSquared < 22.5, "beyond the 99.9 % point of chi-square with 6 degrees: " + chiSquared);
    }
}
