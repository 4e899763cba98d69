package studio.stancebook.dimension.reshaping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import studio.stancebook.geometry.Point;

/**
 * A polyline that goes on running past its landmarks when they move. Each point moves by what the landmarks on both sides
 * of it along the line move by, the nearer one counting for more; a landmark that stays holds the line where it is. The
 * ends of an open line stay.
 */
final class FollowingLine {

    private record Anchor(double at, double byX, double byZ) {}

    private final List<Point> line;
    private final boolean closed;
    private final double[] along;
    private final double length;

    /** @param line at least two points; a closed one without its first point again */
    FollowingLine(List<Point> line, boolean closed) {
        this.line = line;
        this.closed = closed;
        this.along = new double[line.size()];
        for (int i = 1; i < line.size(); i++) {
            along[i] = along[i - 1] + distance(line.get(i - 1), line.get(i));
        }
        double open = along[line.size() - 1];
        this.length = closed ? open + distance(line.get(line.size() - 1), line.get(0)) : open;
    }

    /**
     * The line after the landmarks have moved.
     *
     * @param shifts of landmarks, those that stay among them
     * @param reach how far a landmark may be from the line to hold it, in mm
     */
    List<Point> after(List<LandmarkShift> shifts, double reach) {
        List<Anchor> anchors = new ArrayList<>();
        shifts.forEach(shift -> addAnchor(shift, reach, anchors));
        if (!closed) {
            anchors.add(new Anchor(0, 0, 0));
            anchors.add(new Anchor(length, 0, 0));
        }
        if (anchors.stream().allMatch(anchor -> anchor.byX == 0 && anchor.byZ == 0)) {
            return line;
        }
        anchors.sort(Comparator.comparingDouble(Anchor::at));
        if (closed) {
            closeUp(anchors);
        }
        List<Point> moved = new ArrayList<>(line.size());
        for (int i = 0; i < line.size(); i++) {
            moved.add(moved(line.get(i), along[i], anchors));
        }
        return moved;
    }

    /** The last anchor stands before the first one as well, and the first one after the last. */
    private void closeUp(List<Anchor> anchors) {
        Anchor first = anchors.get(0);
        Anchor last = anchors.get(anchors.size() - 1);
        anchors.add(0, new Anchor(last.at - length, last.byX, last.byZ));
        anchors.add(new Anchor(first.at + length, first.byX, first.byZ));
    }

    private static Point moved(Point point, double at, List<Anchor> anchors) {
        int next = 1;
        while (next < anchors.size() - 1 && anchors.get(next).at < at) {
            next++;
        }
        Anchor before = anchors.get(next - 1);
        Anchor after = anchors.get(next);
        double span = after.at - before.at;
        double share = span <= 0 ? 0 : Math.max(0, Math.min(1, (at - before.at) / span));
        double weight = share * share * (3 - 2 * share);
        return new Point(
                point.x() + before.byX + weight * (after.byX - before.byX),
                point.z() + before.byZ + weight * (after.byZ - before.byZ));
    }

    private void addAnchor(LandmarkShift shift, double reach, List<Anchor> anchors) {
        double nearest = reach;
        double at = -1;
        for (int i = 0; i < line.size(); i++) {
            double off = distance(line.get(i), shift.from());
            if (off <= nearest) {
                nearest = off;
                at = along[i];
            }
        }
        if (at >= 0) {
            anchors.add(new Anchor(at, shift.byX(), shift.byZ()));
        }
    }

    private static double distance(Point from, Point to) {
        return Math.hypot(to.x() - from.x(), to.z() - from.z());
    }
}
