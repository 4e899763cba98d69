package studio.stancebook.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import studio.stancebook.geometry.Point;

class SmoothLineTest {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final Pattern COMMAND = Pattern.compile("([MLC])([^A-Z]*)");

    /** The points of a path, curves in 40 steps, z upwards. */
    private static List<Point> walked(String path) {
        List<Point> points = new ArrayList<>();
        Matcher command = COMMAND.matcher(path);
        while (command.find()) {
            List<Double> numbers = NUMBER.matcher(command.group(2))
                    .results()
                    .map(result -> Double.valueOf(result.group()))
                    .toList();
            if (command.group(1).equals("C")) {
                Point from = points.get(points.size() - 1);
                for (int i = 1; i <= 40; i++) {
                    points.add(new Point(
                            bezier(from.x(), numbers.get(0), numbers.get(2), numbers.get(4), i / 40.0),
                            bezier(from.z(), -numbers.get(1), -numbers.get(3), -numbers.get(5), i / 40.0)));
                }
            } else {
                points.add(new Point(numbers.get(0), -numbers.get(1)));
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
        for (Point point : walked(line.into(new PathData(3)).toString())) {
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
        String path = new SmoothLine()
                .straightFrom(new Point(430, 1190))
                .through(new Point(905, 1742))
                .through(new Point(1700, 1846))
                .straightFrom(new Point(3290, 1780))
                .through(new Point(3500, 1240))
                .into(new PathData(3))
                .toString();

        assertTrue(walked(path).stream().allMatch(point -> point.z() <= 1846.001), path);
    }

    @Test
    void passesThroughEveryPoint() {
        String path = new SmoothLine()
                .through(new Point(0, 0))
                .through(new Point(100, 50))
                .corner(new Point(200, 40))
                .through(new Point(300, 300))
                .into(new PathData())
                .toString();

        assertTrue(path.contains("100-50") && path.contains("200-40") && path.endsWith("300-300"), path);
    }
}
