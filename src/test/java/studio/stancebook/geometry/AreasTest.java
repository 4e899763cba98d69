package studio.stancebook.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class AreasTest {

    private static final List<Point> RECTANGLE = points(0, 100, 4000, 100, 4000, 1100, 0, 1100);
    private static final Line LEVEL = new Line(new Point(0, 600), new Point(1, 600));

    @Test
    void isBaseTimesHeightForARectangle() {
        assertEquals(4000 * 1000, Areas.of(RECTANGLE), 1e-6);
    }

    @Test
    void doesNotDependOnDirectionOrOnARepeatedFirstPoint() {
        List<Point> turned = new ArrayList<>(RECTANGLE);
        Collections.reverse(turned);
        turned.add(turned.get(0));

        assertEquals(Areas.of(RECTANGLE), Areas.of(turned), 1e-6);
    }

    @Test
    void cutsAtALevelLine() {
        assertEquals(4000 * 500, Areas.above(RECTANGLE, LEVEL), 1e-6);
    }

    @Test
    void cutsAtASlopedLineFarFromItsPoints() {
        // from 100 at x = 0 to 1100 at x = 4000: half of the rectangle
        Line diagonal = new Line(new Point(1000, 350), new Point(1400, 450));

        assertEquals(4000 * 1000 / 2.0, Areas.above(RECTANGLE, diagonal), 1e-6);
    }

    @Test
    void isNothingUnderALineAboveAndAllOverALineBelow() {
        assertEquals(0, Areas.above(RECTANGLE, new Line(new Point(0, 1100), new Point(1, 1100))));
        assertEquals(0, Areas.above(RECTANGLE, new Line(new Point(0, 1200), new Point(1, 1200))));
        assertEquals(4000 * 1000, Areas.above(RECTANGLE, new Line(new Point(0, 100), new Point(1, 100))), 1e-6);
        assertEquals(4000 * 1000, Areas.above(RECTANGLE, new Line(new Point(0, 0), new Point(1, 0))), 1e-6);
    }

    @Test
    void countsEveryPieceAboveTheLine() {
        // two towers 100 wide that stand 50 above the line
        List<Point> towers = points(0, 0, 500, 0, 500, 650, 400, 650, 400, 300, 100, 300, 100, 650, 0, 650);

        assertEquals(2 * 100 * 50, Areas.above(towers, LEVEL), 1e-6);
    }

    /** The reference is the overlay of the JTS Topology Suite with a large half plane. */
    @ParameterizedTest
    @MethodSource("stars")
    void agreesWithAPolygonOverlay(List<Point> star) {
        Line line = new Line(new Point(-100, 480), new Point(700, 530));
        Polygon half = polygon(points(-1e4, line.heightAt(-1e4), 1e4, line.heightAt(1e4), 1e4, 1e5, -1e4, 1e5));

        assertEquals(polygon(star).intersection(half).getArea(), Areas.above(star, line), 1e-5);
        assertEquals(polygon(star).getArea(), Areas.of(star), 1e-6);
    }

    /** Outlines round (0, 500), each point at a made-up distance. */
    static Stream<List<Point>> stars() {
        Random random = new Random(4711);
        return Stream.generate(() -> IntStream.range(0, 25)
                        .mapToObj(i -> ray(i * 2 * Math.PI / 25, 100 + 400 * random.nextDouble()))
                        .toList())
                .limit(40);
    }

    @ParameterizedTest
    @MethodSource("noOutlines")
    void refusesWhatEnclosesNoDefiniteArea(List<Point> outline) {
        assertThrows(DegenerateShape.class, () -> Areas.of(outline));
        assertThrows(DegenerateShape.class, () -> Areas.above(outline, LEVEL));
    }

    static Stream<List<Point>> noOutlines() {
        return Stream.of(
                List.of(),
                points(0, 0),
                points(0, 0, 1, 1),
                points(0, 0, 1, 1, 0, 0, 1, 1),
                points(0, 0, 1, 1, 2, 2),
                points(0, 0, 2, 2, 2, 0, 0, 2),
                points(0, 0, 2, 0, 1, 1, 2, 2, 0, 2, 1, 1),
                points(0, 0, 2, 0, 2, 2, 2, 3, 2, 2, 0, 2));
    }

    @Test
    void saysWhereTheOutlineCrossesItself() {
        String message = assertThrows(DegenerateShape.class, () -> Areas.of(points(0, 0, 20, 20, 20, 0, 0, 20)))
                .detail();

        assertTrue(message.contains("(10, 10)"), message);
    }

    @Test
    void refusesAnUprightLine() {
        Line upright = new Line(new Point(5, 0), new Point(5, 1));

        assertThrows(DegenerateShape.class, () -> Areas.above(RECTANGLE, upright));
    }

    private static Point ray(double angle, double length) {
        return new Point(length * Math.cos(angle), 500 + length * Math.sin(angle));
    }

    private static Polygon polygon(List<Point> outline) {
        List<Coordinate> ring = new ArrayList<>(outline.stream()
                .map(point -> new Coordinate(point.x(), point.z()))
                .toList());
        ring.add(ring.get(0));
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static List<Point> points(double... coordinates) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return points;
    }
}
