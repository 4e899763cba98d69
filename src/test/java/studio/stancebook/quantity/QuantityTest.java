package studio.stancebook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

    @Test
    void intervalHoldsItsEndsAndNothingBeyond() {
        Interval interval = new Interval(1, 2);

        assertTrue(interval.contains(1) && interval.contains(2));
        assertFalse(interval.contains(Math.nextDown(1.0)) || interval.contains(Math.nextUp(2.0)));
        assertFalse(interval.contains(Double.NaN));
        assertEquals(1, interval.width());
    }

    @Test
    void intervalRefusesReversedEndsAndNaN() {
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Interval(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new Interval(0, Double.NaN));
    }

    @ParameterizedTest
    @CsvSource({"112.5,113", "112.49999,112", "-112.5,-113", "0,0", "0.5,1"})
    void roundsHalvesAwayFromZero(double value, double expected) {
        assertEquals(expected, Rounding.halfUp(value));
    }

    @Test
    void decidesAHalfOnTheDecimalTextNotOnTheBinaryNeighbour() {
        // 1.005 is stored below 1.005; a person who reads 1.005 expects 1.01.
        assertEquals(1.01, Rounding.halfUp(1.005, 2));
    }

    @ParameterizedTest
    @CsvSource({"2850,3,2850", "0.1,3,0.1", "-0.0001,2,0", "1234567.891,1,1234567.9", "1e-7,3,0"})
    void writesPlainNumbers(double value, int decimals, String expected) {
        assertEquals(expected, NumberText.plain(value, decimals));
    }

    /** Against the rounding of {@link BigDecimal}, halves up from the decimal text of the number. */
    @Test
    void roundsAsDecimalsDo() {
        SplittableRandom random = new SplittableRandom(55);
        for (int i = 0; i < 20_000; i++) {
            int decimals = random.nextInt(5);
            double free = random.nextDouble(-1e4, 1e4);
            double half = (random.nextInt(-100_000, 100_000) + 0.5) / Math.pow(10, decimals);
            for (double value : new double[] {free, half, Math.nextUp(half), Math.nextDown(half), free * 1e9}) {
                String expected = BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString();
                assertEquals(expected, NumberText.fixed(value, decimals), value + " to " + decimals);
            }
        }
    }

    @Test
    void writesTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "ar-EG", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals("1234.50", NumberText.fixed(1234.5, 2));
                assertEquals("+0.25", NumberText.signed(0.25, 2));
                assertEquals("0.00", NumberText.signed(-0.001, 2));
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
