package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.Point;

/**
 * The side of the body as a closed ring: the upper silhouette from its foremost to its rearmost point, dropped there to the
 * ground and closed along it. It is the same ring whether the outline was recorded open or closed, with an underbody or
 * without.
 *
 * @param points the ring, its first point not repeated; the last two stand on the ground
 */
record BodyRing(List<Point> points) {

    private static final int ON_GROUND = 2;

    /** Of a side view whose outline is recorded. */
    static BodyRing of(DimensionSet set) {
        List<Point> ring = new ArrayList<>(silhouette(set.points(Polyline.OUTLINE)));
        double end = ring.get(ring.size() - 1).x();
        ring.add(new Point(end, 0));
        ring.add(new Point(ring.get(0).x(), 0));
        return new BodyRing(ring);
    }

    /** The upper part of an outline between its foremost and its rearmost point, in the direction in which it was drawn. */
    private static List<Point> silhouette(List<Point> outline) {
        boolean closed = outline.get(0).equals(outline.get(outline.size() - 1));
        List<Point> points = closed ? outline.subList(0, outline.size() - 1) : outline;
        int nose = extreme(points, Comparator.comparingDouble(Point::x));
        int tail = extreme(points, Comparator.comparingDouble(point -> -point.x()));
        if (!closed) {
            return points.subList(Math.min(nose, tail), Math.max(nose, tail) + 1);
        }
        List<Point> there = along(points, nose, tail);
        List<Point> back = along(points, tail, nose);
        return highest(there) >= highest(back) ? there : back;
    }

    /** The first in the order; of several at one x the lowest. */
    private static int extreme(List<Point> points, Comparator<Point> order) {
        Point first = points.stream().min(order.thenComparingDouble(Point::z)).orElseThrow();
        return points.indexOf(first);
    }

    private static List<Point> along(List<Point> ring, int from, int to) {
        List<Point> part = new ArrayList<>();
        for (int i = from; i != to; i = (i + 1) % ring.size()) {
            part.add(ring.get(i));
        }
        part.add(ring.get(to));
        return part;
    }

    private static double highest(List<Point> points) {
        return points.stream().mapToDouble(Point::z).max().orElseThrow();
    }

    /**
     * The area, mm², with its change when the outline moves as a whole. The partial derivatives are those of the shoelace sum;
     * a point on the ground follows the outline along the ground only.
     */
    Estimate area() {
        double signed = signedArea();
        double turn = Math.signum(signed);
        double byX = 0;
        double byZ = 0;
        for (int i = 0; i < points.size(); i++) {
            Point before = points.get((i + points.size() - 1) % points.size());
            Point after = points.get((i + 1) % points.size());
            byX += turn * (after.z() - before.z()) / 2;
            byZ += i < points.size() - ON_GROUND ? turn * (before.x() - after.x()) / 2 : 0;
        }
        return Estimate.constant(Math.abs(signed))
                .plus(Estimate.of(Variable.x(Polyline.OUTLINE), 0).times(byX))
                .plus(Estimate.of(Variable.z(Polyline.OUTLINE), 0).times(byZ));
    }

    private double signedArea() {
        double twice = 0;
        Point before = points.get(points.size() - 1);
        for (Point point : points) {
            twice += before.x() * point.z() - point.x() * before.z();
            before = point;
        }
        return twice / 2;
    }
}
