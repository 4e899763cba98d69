package studio.stancebook.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * Areas of outlines, square mm. An outline is a list of points in either direction; the last is joined to the first, and may
 * repeat it.
 */
public final class Areas {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Areas() {}

    /**
     * The area inside an outline, above 0.
     *
     * @throws DegenerateShape if the outline has fewer than three different points, encloses nothing, or crosses or touches
     *     itself
     */
    public static double of(List<Point> outline) {
        return Area.ofRing(ring(outline));
    }

    /**
     * The area of the part of an outline's inside that lies above a line extended without end, 0 or more. With d the height
     * above the line, each edge is cut where d = 0 and the parts with d below 0 are laid onto the line.
     *
     * @throws DegenerateShape as {@link #of}, or if the line is upright
     */
    public static double above(List<Point> outline, Line line) {
        Coordinate[] ring = ring(outline);
        List<Coordinate> kept = new ArrayList<>();
        for (int i = 1; i < ring.length; i++) {
            keepAbove(line, ring[i - 1], ring[i], kept);
        }
        if (kept.isEmpty()) {
            return 0;
        }
        kept.add(kept.get(0));
        return Area.ofRing(kept.toArray(Coordinate[]::new));
    }

    private static void keepAbove(Line line, Coordinate from, Coordinate to, List<Coordinate> kept) {
        double fromAbove = from.y - line.heightAt(from.x);
        double toAbove = to.y - line.heightAt(to.x);
        if (fromAbove >= 0) {
            kept.add(from);
        }
        if (fromAbove < 0 != toAbove < 0) {
            double t = fromAbove / (fromAbove - toAbove);
            kept.add(new CoordinateXY(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y)));
        }
    }

    private static Coordinate[] ring(List<Point> outline) {
        if (outline.stream().distinct().count() < 3) {
            throw new DegenerateShape("An outline needs at least three different points to enclose an area.");
        }
        List<Coordinate> ring = new ArrayList<>(outline.size() + 1);
        outline.forEach(point -> ring.add(new CoordinateXY(point.x(), point.z())));
        if (!outline.get(0).equals(outline.get(outline.size() - 1))) {
            ring.add(ring.get(0));
        }
        Coordinate[] coordinates = ring.toArray(Coordinate[]::new);
        requireSimple(coordinates);
        return coordinates;
    }

    private static void requireSimple(Coordinate[] ring) {
        TopologyValidationError error = new IsValidOp(GEOMETRY.createPolygon(ring)).getValidationError();
        if (error != null) {
            Coordinate where = error.getCoordinate();
            throw new DegenerateShape("The outline crosses or touches itself near " + new Point(where.x, where.y).text()
                    + ", so its area is not defined.");
        }
    }
}
