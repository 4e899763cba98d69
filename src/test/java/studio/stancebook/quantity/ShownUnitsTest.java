package studio.stancebook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 1 in = 25.4 mm exactly: international yard and pound agreement of 1959, NIST SP 811 appendix B.6, from memory. */
class ShownUnitsTest {

    private static final ShownUnits INCHES = new ShownUnits(LengthUnit.INCH, AngleReference.VERTICAL);

    @AfterEach
    void reset() {
        ShownUnits.reset();
    }

    @Test
    void writesMillimetresWhereNobodyAsksForAnythingElse() {
        assertEquals("2850 mm", ShownUnits.text(2850, 0));
        assertEquals("2850.5 mm", ShownUnits.text(2850.5, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "25.4, 0, 1.00",
        "2850, 0, 112.20",
        "-84, 0, -3.31",
        // 0.005 in are 0.127 mm: half of the last digit goes up, anything less goes down
        "0.127, 0, 0.01",
        "0.1269, 0, 0.00",
        "-0.1269, 0, 0.00",
        "2850, 1, 112.20",
        "2850.001, 3, 112.2048"
    })
    void writesHundredthsOfAnInch(double mm, int decimals, String text) {
        INCHES.use();

        assertEquals(text, ShownUnits.plain(mm, decimals));
    }

    @Test
    void signsAChange() {
        INCHES.use();

        assertEquals("+0.91", ShownUnits.signed(23, 0));
        assertEquals("-3.31", ShownUnits.signed(-84, 0));
        assertEquals("0.00", ShownUnits.signed(0.1, 0));
    }

    /** 1000 / 25.4 = 39.3700787...: 39.37 in would lie outside; 6000 / 25.4 = 236.2204...: 236.23 would. */
    @Test
    void writesARangeOfWhichBothEndsAreAccepted() {
        Interval range = new Interval(1000, 6000);

        assertEquals("1000 to 6000 mm", LengthUnit.MM.range(range, 3));
        assertEquals("39.38 to 236.22 in", LengthUnit.INCH.range(range, 3));
        assertEquals("1.00 to 2.00 in", LengthUnit.INCH.range(new Interval(25.4, 50.8), 3));
        assertEquals("-59.05 to 98.42 in", LengthUnit.INCH.range(new Interval(-1500, 2500), 3));
    }

    @Test
    void readsALeanFromTheVerticalAndBack() {
        assertEquals(62, AngleReference.VERTICAL.of(28));
        assertEquals(28, AngleReference.VERTICAL.of(AngleReference.VERTICAL.of(28)));
        assertEquals(-20, AngleReference.VERTICAL.of(110));
        assertEquals(28, AngleReference.HORIZONTAL.of(28));
    }
}
