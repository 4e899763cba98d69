package studio.stancebook.drawing.sideview;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import studio.stancebook.geometry.Point;

/**
 * Leaves out points of a recorded line that the eye would not miss (the method of Ramer, Douglas and Peucker), so that a
 * line of thousands of points stays a short path.
 */
final class Thinning {

    private Thinning() {}

    /** The line within {@code toleranceMm} of the original, then coarser until it has at most {@code most} points. */
    static List<Point> of(List<Point> points, double toleranceMm, int most) {
        double tolerance = toleranceMm;
        List<Point> thinned = within(points, tolerance);
        while (thinned.size() > most) {
            tolerance *= 1.6;
            thinned = within(points, tolerance);
        }
        return thinned;
    }

    private static List<Point> within(List<Point> points, double tolerance) {
        if (points.size() < 3) {
            return points;
        }
        boolean[] kept = new boolean[points.size()];
        kept[0] = true;
        kept[points.size() - 1] = true;
        Deque<int[]> spans = new ArrayDeque<>();
        spans.push(new int[] {0, points.size() - 1});
        while (!spans.isEmpty()) {
            int[] span = spans.pop();
            int farthest = farthest(points, span[0], span[1], tolerance);
            if (farthest >= 0) {
                kept[farthest] = true;
                spans.push(new int[] {span[0], farthest});
                spans.push(new int[] {farthest, span[1]});
            }
        }
        List<Point> result = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            if (kept[i]) {
                result.add(points.get(i));
            }
        }
        return result;
    }

    private static int farthest(List<Point> points, int from, int to, double tolerance) {
        int found = -1;
        double most = tolerance;
        for (int i = from + 1; i < to; i++) {
            double distance = distance(points.get(i), points.get(from), points.get(to));
            if (distance > most) {
                most = distance;
                found = i;
            }
        }
        return found;
    }

    private static double distance(Point point, Point from, Point to) {
        Vector along = Vector.between(from, to);
        Vector off = Vector.between(from, point);
        if (along.length() == 0) {
            return off.length();
        }
        double t = (off.x() * along.x() + off.z() * along.z()) / (along.length() * along.length());
        Point nearest = along.times(Math.max(0, Math.min(1, t))).from(from);
        return Vector.between(nearest, point).length();
    }
}
