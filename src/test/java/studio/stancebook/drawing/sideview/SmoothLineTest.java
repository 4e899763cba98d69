package studio.stancebook.drawing.sideview;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import studio.stancebook.geometry.Point;
import studio.stancebook.paper.Path;
import studio.stancebook.paper.Step;

class SmoothLineTest {

    /** The points of a path, curves in 40 steps, z upwards. */
    private static List<Point> walked(Path path) {
        List<Point> points = new ArrayList<>();
        for (Step step : path.steps()) {
            if (step instanceof Step.CurveTo curve) {
                Point from = points.get(points.size() - 1);
                for (int i = 1; i <= 40; i++) {
                    points.add(new Point(
                            bezier(from.x(), curve.x1(), curve.x2(), curve.x(), i / 40.0),
                            bezier(from.z(), -curve.y1(), -curve.y2(), -curve.y(), i / 40.0)));
                }
            } else if (step instanceof Step.LineTo line) {
                points.add(new Point(line.x(), -line.y()));
            } else if (step instanceof Step.MoveTo move) {
                points.add(new Point(move.x(), -move.y()));
            }
        }
        return points;
    }

    private static double bezier(double a, double b, double c, double d, double t) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }

    @RepeatedTest(20)
    void staysBetweenTheHeightsOfTheTwoPointsThatItJoins(RepetitionInfo repetition) {
        SplittableRandom random = new SplittableRandom(repetition.getCurrentRepetition());
        List<Point> knots = new ArrayList<>();
        SmoothLine line = new SmoothLine();
        double x = 0;
        for (int i = 0; i < 8; i++) {
            x += 50 + 900 * random.nextDouble();
            Point knot = new Point(Math.rint(x), Math.rint(2000 * random.nextDouble()));
            knots.add(knot);
            line.through(knot);
        }
        for (Point point : walked(line.into(new PathBuilder()).path())) {
            int i = 1;
            while (i < knots.size() - 1 && knots.get(i).x() < point.x()) {
                i++;
            }
            double low = Math.min(knots.get(i - 1).z(), knots.get(i).z());
            double high = Math.max(knots.get(i - 1).z(), knots.get(i).z());
            assertTrue(point.z() >= low - 0.01 && point.z() <= high + 0.01, point + " between " + knots);
        }
    }

    @Test
    void roofIsHighestAtItsApex() {
        Path path = new SmoothLine()
                .straightFrom(new Point(430, 1190))
                .through(new Point(905, 1742))
                .through(new Point(1700, 1846))
                .straightFrom(new Point(3290, 1780))
                .through(new Point(3500, 1240))
                .into(new PathBuilder())
                .path();

        assertTrue(walked(path).stream().allMatch(point -> point.z() <= 1846.001), path.toString());
    }

    @Test
    void passesThroughEveryPoint() {
        Path path = new SmoothLine()
                .through(new Point(0, 0))
                .through(new Point(100, 50))
                .corner(new Point(200, 40))
                .through(new Point(300, 300))
                .into(new PathBuilder())
                .path();

        assertTrue(
                walked(path).containsAll(List.of(new Point(100, 50), new Point(200, 40), new Point(300, 300))),
                path.toString());
    }
}
