package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.Areas;
import studio.stancebook.geometry.Point;

/**
 * The side of the body as a closed ring: the outline, closed along the underbody or along the ground.
 *
 * @param points the ring, its first point not repeated
 * @param outline how many points, from the first, belong to the outline
 * @param underbody how many of the points after those belong to the underbody; the others stand on the ground
 */
record BodyRing(List<Point> points, int outline, int underbody) {

    /**
     * Closed along the underbody where there is one, else along the ground.
     *
     * @throws studio.stancebook.geometry.DegenerateShape if the outline alone crosses itself
     */
    static BodyRing closedBelow(DimensionSet set) {
        Areas.of(closedOnGround(set).points());
        List<Point> outline = set.points(Polyline.OUTLINE);
        List<Point> underbody = new ArrayList<>(set.points(Polyline.UNDERBODY));
        if (underbody.isEmpty() || closed(outline)) {
            return closedOnGround(set);
        }
        if (runsRearward(underbody) == runsRearward(outline)) {
            Collections.reverse(underbody);
        }
        List<Point> ring = new ArrayList<>(outline);
        ring.addAll(underbody);
        return new BodyRing(ring, outline.size(), underbody.size());
    }

    /** Dropped to the ground at both ends, unless the outline is closed already. */
    static BodyRing closedOnGround(DimensionSet set) {
        List<Point> outline = set.points(Polyline.OUTLINE);
        if (closed(outline)) {
            return new BodyRing(outline.subList(0, outline.size() - 1), outline.size() - 1, 0);
        }
        List<Point> ring = new ArrayList<>(outline);
        ring.add(new Point(last(outline).x(), 0));
        ring.add(new Point(outline.get(0).x(), 0));
        return new BodyRing(ring, outline.size(), 0);
    }

    /**
     * The area, mm², with its change when the outline or the underbody moves as a whole. The partial derivatives are those
     * of the shoelace sum; a point on the ground follows the outline along the ground only. Where outline and underbody were
     * drawn apart their ends may cross a little, which this sum forgives.
     */
    Estimate area() {
        double signed = signedArea();
        double turn = Math.signum(signed);
        Estimate area = Estimate.constant(Math.abs(signed));
        for (int i = 0; i < points.size(); i++) {
            Point before = points.get((i + points.size() - 1) % points.size());
            Point after = points.get((i + 1) % points.size());
            Polyline owner = i >= outline && i < outline + underbody ? Polyline.UNDERBODY : Polyline.OUTLINE;
            boolean onGround = i >= outline + underbody;
            area = area.plus(Estimate.of(Variable.x(owner), 0).times(turn * (after.z() - before.z()) / 2))
                    .plus(Estimate.of(Variable.z(owner), 0).times(onGround ? 0 : turn * (before.x() - after.x()) / 2));
        }
        return area;
    }

    private double signedArea() {
        double twice = 0;
        Point before = last(points);
        for (Point point : points) {
            twice += before.x() * point.z() - point.x() * before.z();
            before = point;
        }
        return twice / 2;
    }

    private static boolean runsRearward(List<Point> line) {
        return last(line).x() > line.get(0).x();
    }

    private static boolean closed(List<Point> line) {
        return line.get(0).equals(last(line));
    }

    private static Point last(List<Point> line) {
        return line.get(line.size() - 1);
    }
}
