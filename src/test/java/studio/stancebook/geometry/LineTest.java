package studio.stancebook.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineTest {

    @Test
    void carriesAWindscreenDownToTheWheelCentre() {
        // 600 rise over 600 run: at x = 0, 500 behind which the cowl stands, 500 lower
        Line screen = new Line(new Point(500, 1000), new Point(1100, 1600));

        assertEquals(500, screen.heightAt(0), 1e-12);
        assertEquals(1300, screen.heightAt(800), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 0", "1, 1, 45", "0, 1, 90", "-1, 1, 135", "-1, 0, 180", "1, -1, -45", "0, -1, -90"})
    void inclinationIsFromRearwardUp(double dx, double dz, double expectedDeg) {
        Line line = new Line(new Point(100, 200), new Point(100 + dx, 200 + dz));

        assertEquals(expectedDeg, line.inclinationDeg(), 1e-12);
    }

    @Test
    void refusesTwoEqualPoints() {
        assertThrows(DegenerateShape.class, () -> new Line(new Point(0.0, 1), new Point(-0.0, 1)));
    }

    @Test
    void anUprightLineHasNoOneHeight() {
        Line upright = new Line(new Point(500, 0), new Point(500, 10));

        assertTrue(upright.upright());
        assertThrows(DegenerateShape.class, () -> upright.heightAt(500));
    }
}
