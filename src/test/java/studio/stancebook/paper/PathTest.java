package studio.stancebook.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathTest {

    /** As the grammar of path data in SVG 2, section 9.3, has it. */
    @Test
    void isWrittenAsShortAsAbsoluteCommandsAllow() {
        Path path = new Path(List.of(
                new Step.MoveTo(0, -5),
                new Step.LineTo(10, 5),
                new Step.LineTo(20.5, 5),
                new Step.LineTo(20.5, -3),
                new Step.CurveTo(1, 2, 3, 4, 5, 6),
                new Step.ArcTo(7.25, false, true, -5, 6),
                new Step.Close()));

        assertThat(PathData.of(path, 2)).isEqualTo("M0-5L10 5H20.5V-3C1 2 3 4 5 6A7.25 7.25 0 0 1-5 6Z");
        assertThat(PathReader.of(PathData.of(path, 2))).isEqualTo(path);
    }

    /** Against the same quarter, half and three quarters as the Java library draws them. */
    @ParameterizedTest
    @CsvSource({"0, 1, 10, 0, 90", "0, 0, -10, 0, 90", "1, 1, -10, 0, 270", "1, 0, 10, 0, 270"})
    void turnsArcsIntoCurvesAroundTheirCentre(int large, int sweep, double endX, double centreX, double degrees) {
        Path path = PathReader.curved("M0-10A10 10 0 " + large + " " + sweep + " " + endX + " 0");

        for (double[] point : pointsOf(path)) {
            assertThat(Math.hypot(point[0] - centreX, point[1])).isCloseTo(10, within(0.0001));
        }
        Area drawn = new Area(shape(path, centreX));
        Arc2D expected = new Arc2D.Double(-10, -10, 20, 20, 90, sweep == 1 ? -degrees : degrees, Arc2D.PIE);
        drawn.exclusiveOr(new Area(expected));
        assertThat(drawn.getBounds2D().getWidth() * drawn.getBounds2D().getHeight() < 1 || thin(drawn))
                .isTrue();
    }

    /** The outlines of two arcs that agree differ by slivers alone. */
    private static boolean thin(Area area) {
        return !area.contains(5, 5) && !area.contains(-5, 5) && !area.contains(5, -5) && !area.contains(-5, -5);
    }

    private static Path2D shape(Path path, double centreX) {
        Path2D shape = new Path2D.Double();
        for (Step step : path.steps()) {
            if (step instanceof Step.MoveTo move) {
                shape.moveTo(move.x(), move.y());
            } else if (step instanceof Step.CurveTo c) {
                shape.curveTo(c.x1(), c.y1(), c.x2(), c.y2(), c.x(), c.y());
            }
        }
        shape.lineTo(centreX, 0);
        shape.closePath();
        return shape;
    }

    private static List<double[]> pointsOf(Path path) {
        double[] last = new double[2];
        return path.steps().stream()
                .flatMap(step -> {
                    if (step instanceof Step.CurveTo c) {
                        double middleX = (last[0] + 3 * c.x1() + 3 * c.x2() + c.x()) / 8;
                        double middleY = (last[1] + 3 * c.y1() + 3 * c.y2() + c.y()) / 8;
                        last[0] = c.x();
                        last[1] = c.y();
                        return List.of(new double[] {middleX, middleY}, new double[] {c.x(), c.y()}).stream();
                    }
                    Step.MoveTo move = (Step.MoveTo) step;
                    last[0] = move.x();
                    last[1] = move.y();
                    return List.of(new double[] {move.x(), move.y()}).stream();
                })
                .toList();
    }

    @Test
    void placesEveryStep() {
        assertThat(PathReader.of("M1 2L3 4C1 1 2 2 3 3Z").placed(0.5, 10, 20).steps())
                .containsExactly(
                        new Step.MoveTo(10.5, 21),
                        new Step.LineTo(11.5, 22),
                        new Step.CurveTo(10.5, 20.5, 11, 21, 11.5, 21.5),
                        new Step.Close());
    }
}
