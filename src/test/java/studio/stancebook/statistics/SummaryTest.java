package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SummaryTest {

    @Test
    void ofNoValuesHasNothingButTheirNumber() {
        Summary summary = SortedColumn.empty().summary();
        assertEquals(0, summary.n());
        for (OptionalDouble figure : figures(summary)) {
            assertEquals(OptionalDouble.empty(), figure);
        }
        assertEquals(OptionalDouble.empty(), summary.standardDeviation());
        assertEquals(ClassSize.TOO_SMALL, summary.classSize());
    }

    @Test
    void ofOneValueHasNoStandardDeviation() {
        Summary summary = SortedColumn.of(4.5).summary();
        assertEquals(OptionalDouble.empty(), summary.standardDeviation());
        assertEquals(OptionalDouble.of(4.5), summary.mean());
        assertEquals(OptionalDouble.of(4.5), summary.p5());
        assertEquals(OptionalDouble.of(4.5), summary.p95());
        assertEquals(OptionalDouble.of(0), summary.interquartileRange());
        assertEquals(OptionalDouble.of(0), summary.medianAbsoluteDeviation());
    }

    @Test
    void ofTwoValuesByHand() {
        Summary summary = SortedColumn.of(14, 10).summary();
        assertEquals(OptionalDouble.of(12), summary.mean());
        assertEquals(Math.sqrt(8), summary.standardDeviation().orElseThrow(), 1e-15);
        assertEquals(OptionalDouble.of(11), summary.p25());
        assertEquals(OptionalDouble.of(12), summary.median());
        assertEquals(OptionalDouble.of(13), summary.p75());
        assertEquals(OptionalDouble.of(2), summary.interquartileRange());
        assertEquals(OptionalDouble.of(2), summary.medianAbsoluteDeviation());
        assertEquals(2 * 1.4826, summary.scaledMedianAbsoluteDeviation().orElseThrow(), 1e-15);
    }

    @Test
    void scalesWithItsValues() {
        compareTransformed(25.4, 0);
        compareTransformed(1e-6, 0);
    }

    @Test
    void shiftsWithItsValuesAndKeepsItsSpread() {
        compareTransformed(1, 4000);
        compareTransformed(1, -1e6);
    }

    private static void compareTransformed(double scale, double shift) {
        Random random = new Random(5);
        for (int n = 1; n < 40; n++) {
            double[] values = random.doubles(n, 1, 2).toArray();
            Summary before = SortedColumn.of(values).summary();
            Summary after = SortedColumn.of(
                            Arrays.stream(values).map(x -> scale * x + shift).toArray())
                    .summary();
            double tolerance = 1e-14 * (scale + Math.abs(shift));
            OptionalDouble[] locations = figures(before);
            for (int i = 0; i < locations.length; i++) {
                double expected = scale * locations[i].getAsDouble() + shift;
                assertEquals(expected, figures(after)[i].getAsDouble(), 4 * tolerance);
            }
            assertEquals(
                    scale * before.standardDeviation().orElse(0),
                    after.standardDeviation().orElse(0),
                    4 * tolerance);
            assertEquals(
                    scale * before.medianAbsoluteDeviation().orElse(0),
                    after.medianAbsoluteDeviation().orElse(0),
                    4 * tolerance);
        }
    }

    private static OptionalDouble[] figures(Summary summary) {
        return new OptionalDouble[] {
            summary.mean(),
            summary.min(),
            summary.p5(),
            summary.p10(),
            summary.p25(),
            summary.median(),
            summary.p75(),
            summary.p90(),
            summary.p95(),
            summary.max()
        };
    }

    @Test
    void saysHowMuchItsClassCanCarry() {
        assertEquals(ClassSize.TOO_SMALL, ClassSize.of(0));
        assertEquals(ClassSize.TOO_SMALL, ClassSize.of(2));
        assertEquals(ClassSize.PROVISIONAL, ClassSize.of(3));
        assertEquals(ClassSize.PROVISIONAL, ClassSize.of(7));
        assertEquals(ClassSize.SUFFICIENT, ClassSize.of(8));
        assertThrows(IllegalArgumentException.class, () -> ClassSize.of(-1));
    }
}
