package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.geometry.Point;

/**
 * A line that was taken off a drawing point by point, as a smooth path again. A corner is a point at which the line turns
 * by more than a few degrees and far more than at the points beside it: on a curve, neighbours turn alike.
 */
final class TracedCurve {

    private static final double LEAST_CORNER_DEG = 9;
    private static final double MORE_THAN_NEIGHBOURS = 2.0;
    private static final double SURE_CORNER_DEG = 40;
    private static final int FEWEST_A_RUN = 3;

    private final List<Point> points;
    private final double toleranceMm;
    private final int most;

    TracedCurve(List<Point> points, double toleranceMm, int most) {
        this.points = apart(points);
        this.toleranceMm = toleranceMm;
        this.most = most;
    }

    private static List<Point> apart(List<Point> points) {
        List<Point> kept = new ArrayList<>();
        for (Point point : points) {
            boolean repeated = !kept.isEmpty()
                    && Vector.between(kept.get(kept.size() - 1), point).length() < 0.5;
            if (!repeated) {
                kept.add(point);
            }
        }
        return kept;
    }

    /** Writes the line into {@code path}; nothing when all its points are one. */
    PathBuilder into(PathBuilder path) {
        if (points.size() < 2) {
            return path;
        }
        List<List<Point>> runs = runs();
        int share = most / runs.size();
        return share < FEWEST_A_RUN ? zigzag(path) : smooth(path, runs, share);
    }

    private PathBuilder smooth(PathBuilder path, List<List<Point>> runs, int share) {
        SmoothLine line = new SmoothLine(SURE_CORNER_DEG);
        for (List<Point> run : runs) {
            List<Point> thinned = Thinning.of(run, toleranceMm, share);
            line.corner(thinned.get(0));
            thinned.subList(1, thinned.size() - 1).forEach(line::through);
        }
        line.through(points.get(points.size() - 1));
        return line.into(path);
    }

    /** More corners than a drawing has: straight lines, as many as there is room for. */
    private PathBuilder zigzag(PathBuilder path) {
        List<Point> thinned = Thinning.of(points, toleranceMm, most);
        path.moveTo(thinned.get(0));
        thinned.subList(1, thinned.size()).forEach(path::lineTo);
        return path;
    }

    /** The line cut at its corners; neighbours share the corner. */
    private List<List<Point>> runs() {
        List<List<Point>> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i < points.size() - 1; i++) {
            if (cornerAt(i)) {
                runs.add(points.subList(from, i + 1));
                from = i;
            }
        }
        runs.add(points.subList(from, points.size()));
        return runs;
    }

    private boolean cornerAt(int i) {
        double turn = turnAt(i);
        double beside = Math.max(turnAt(i - 1), turnAt(i + 1));
        return turn > SURE_CORNER_DEG || (turn > LEAST_CORNER_DEG && turn > MORE_THAN_NEIGHBOURS * beside);
    }

    /** How far the line turns at a point, degrees; 0 at its ends. */
    private double turnAt(int i) {
        if (i < 1 || i > points.size() - 2) {
            return 0;
        }
        return Vector.between(points.get(i - 1), points.get(i))
                .turnDeg(Vector.between(points.get(i), points.get(i + 1)));
    }
}
