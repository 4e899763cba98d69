package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;

/**
 * A line through points with one tangent at each, made of cubic curves whose handles stay within the box of the two
 * points they join; a curve lies within the hull of its handles, so between two points it never rises above the higher
 * nor sinks below the lower one. Where the line turns by more than a corner angle it keeps the corner. Common practice,
 * no source: the trade lays tape through points and lets it run straight where the body does.
 */
final class SmoothLine {

    private static final double CORNER_DEG = 58;
    /** Share of a straight piece that is bent into its neighbour where the line turns by {@link #FULL_TURN_DEG}. */
    private static final double BENT_SHARE = 0.42;

    private static final double FULL_TURN_DEG = 34;
    private static final double MOST_BENT_MM = 380;
    /** Where a straight piece meets a curved one, how far the tangent keeps to the straight one. */
    private static final double STRAIGHT_SAY = 0.72;

    private final List<Knot> knots = new ArrayList<>();
    private final double cornerDeg;

    SmoothLine() {
        this(CORNER_DEG);
    }

    SmoothLine(double cornerDeg) {
        this.cornerDeg = cornerDeg;
    }

    /** A point, whether the piece after it is straight but for its ends, and whether the line has a corner there. */
    private record Knot(Point at, boolean straightAfter, boolean corner) {}

    /** Adds a point after which the line curves. */
    SmoothLine through(Point point) {
        return add(point, false, false);
    }

    /** Adds a point after which the line runs straight. */
    SmoothLine straightFrom(Point point) {
        return add(point, true, false);
    }

    /** Adds a corner. */
    SmoothLine corner(Point point) {
        return add(point, false, true);
    }

    private SmoothLine add(Point point, boolean straight, boolean corner) {
        boolean repeated = !knots.isEmpty() && last().distanceTo(point) < 0.5;
        if (!repeated) {
            knots.add(new Knot(point, straight, corner));
        }
        return this;
    }

    private Vector last() {
        return Vector.to(knots.get(knots.size() - 1).at());
    }

    int size() {
        return knots.size();
    }

    /** Writes the line into {@code path}, beginning with a move to its first point. */
    PathBuilder into(PathBuilder path) {
        path.moveTo(knots.get(0).at());
        return on(path);
    }

    /** Continues {@code path}, which stands at the first point. */
    PathBuilder on(PathBuilder path) {
        for (int i = 0; i + 1 < knots.size(); i++) {
            piece(path, i);
        }
        return path;
    }

    /** Writes the piece that begins at knot {@code i} alone, with the tangents that it has within the line. */
    PathBuilder piece(int i, PathBuilder path) {
        path.moveTo(knots.get(i).at());
        piece(path, i);
        return path;
    }

    private void piece(PathBuilder path, int i) {
        Knot from = knots.get(i);
        Point to = knots.get(i + 1).at();
        if (from.straightAfter()) {
            straight(path, from.at(), tangent(i), to, tangent(i + 1));
        } else {
            curve(path, from.at(), tangent(i), to, tangent(i + 1), 1.0 / 3);
        }
    }

    private static void curve(
            PathBuilder path, Point from, @Nullable Vector start, Point to, @Nullable Vector end, double share) {
        Vector chord = Vector.between(from, to);
        double reach = chord.length() * share;
        Vector out = start == null ? chord.unit() : start;
        Vector in = end == null ? chord.unit() : end;
        double first = Math.min(reach, room(from, out, from, to));
        double second = Math.min(reach, room(to, in.times(-1), from, to));
        path.curveTo(out.times(first).from(from), in.times(-second).from(to), to);
    }

    private void straight(PathBuilder path, Point from, @Nullable Vector start, Point to, @Nullable Vector end) {
        Vector along = Vector.between(from, to);
        Vector unit = along.unit();
        double first = start == null ? 0 : bent(along, start);
        double last = end == null ? 0 : bent(along, end);
        if (start != null) {
            Point begin = unit.times(first).from(from);
            path.curveTo(
                    start.times(first * 0.4).from(from),
                    unit.times(-first * 0.4).from(begin),
                    begin);
        }
        Point finish = unit.times(-last).from(to);
        path.lineTo(finish);
        if (end != null) {
            path.curveTo(
                    unit.times(last * 0.4).from(finish), end.times(-last * 0.4).from(to), to);
        }
    }

    /** How much of a straight piece bends, the more the further it has to turn. */
    private static double bent(Vector along, Vector tangent) {
        double turn = Math.min(1, along.turnDeg(tangent) / FULL_TURN_DEG);
        return Math.min(along.length() * BENT_SHARE, MOST_BENT_MM) * Math.max(0.25, turn);
    }

    /** How far one may go from a corner of the box of two points before leaving that box. */
    private static double room(Point origin, Vector direction, Point from, Point to) {
        double alongX = room(origin.x(), direction.x(), from.x(), to.x());
        double alongZ = room(origin.z(), direction.z(), from.z(), to.z());
        return Math.min(alongX, alongZ);
    }

    private static double room(double origin, double step, double from, double to) {
        if (Math.abs(step) < 1e-9) {
            return Double.MAX_VALUE;
        }
        double wall = step > 0 ? Math.max(from, to) : Math.min(from, to);
        return Math.max(0, (wall - origin) / step);
    }

    /** The direction of the line at a knot; null at its ends and at corners, where each side has its own. */
    private @Nullable Vector tangent(int i) {
        if (i == 0 || i == knots.size() - 1 || knots.get(i).corner()) {
            return null;
        }
        Vector before = Vector.between(knots.get(i - 1).at(), knots.get(i).at());
        Vector after = Vector.between(knots.get(i).at(), knots.get(i + 1).at());
        if (before.turnDeg(after) > cornerDeg) {
            return null;
        }
        boolean extreme = before.z() * after.z() < 0 && before.x() * after.x() > 0;
        if (extreme) {
            return new Vector(Math.signum(before.x()), 0);
        }
        boolean straightBefore = knots.get(i - 1).straightAfter();
        boolean straightHere = knots.get(i).straightAfter();
        if (straightBefore == straightHere) {
            return blend(before, after);
        }
        double share = straightBefore ? STRAIGHT_SAY : 1 - STRAIGHT_SAY;
        return Vector.atDeg(after.headingDeg() + share * before.turnFromDeg(after));
    }

    /** The shorter neighbour has the greater say, as with centripetal curves. */
    private static Vector blend(Vector before, Vector after) {
        return before.unit()
                .times(1 / Math.sqrt(before.length()))
                .plus(after.unit().times(1 / Math.sqrt(after.length())))
                .unit();
    }
}
