package studio.stancebook.demo;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.geometry.Point;

/** A line laid through points with given directions, and taken off again point by point. */
final class Contour {

    private static final double REACH = 0.36;

    private final List<Point> points = new ArrayList<>();
    private Point at;
    private double direction;

    /** Begins at a point in a direction, degrees above the rearward horizontal. */
    Contour(Point start, double directionDeg) {
        this.at = start;
        this.direction = directionDeg;
        points.add(rounded(start));
    }

    /** A straight line; the direction becomes its own. */
    Contour straightTo(Point end) {
        double along = StrictMath.toDegrees(StrictMath.atan2(end.z() - at.z(), end.x() - at.x()));
        direction = along;
        return arrive(end, along, along);
    }

    /** A curve that arrives and goes on in that direction. */
    Contour to(Point end, double directionDeg) {
        return to(end, directionDeg, directionDeg);
    }

    /** A curve that arrives in one direction and goes on in another: a corner. */
    Contour to(Point end, double arrivingDeg, double leavingDeg) {
        return arrive(end, arrivingDeg, leavingDeg);
    }

    /** From here on in that direction: a corner at the present point. */
    Contour turn(double directionDeg) {
        direction = directionDeg;
        return this;
    }

    private Contour arrive(Point end, double arrivingDeg, double leavingDeg) {
        double chord = StrictMath.hypot(end.x() - at.x(), end.z() - at.z());
        Point first = step(at, direction, Math.min(REACH * chord, room(at, direction, end)));
        Point second = step(end, arrivingDeg + 180, Math.min(REACH * chord, room(end, arrivingDeg + 180, at)));
        int pieces = Math.max(5, Math.min(10, (int) (chord / 70)));
        for (int i = 1; i <= pieces; i++) {
            add(onCurve(at, first, second, end, (double) i / pieces));
        }
        at = end;
        direction = leavingDeg;
        return this;
    }

    /** How far a handle goes without leaving the box of the two points: no roof rises over its highest point. */
    private static double room(Point from, double degrees, Point other) {
        double angle = StrictMath.toRadians(degrees);
        return Math.min(
                room(StrictMath.cos(angle), other.x() - from.x()), room(StrictMath.sin(angle), other.z() - from.z()));
    }

    private static double room(double step, double wall) {
        if (StrictMath.abs(step) < 1e-6) {
            return Double.MAX_VALUE;
        }
        return Math.max(0, wall / step);
    }

    private void add(Point point) {
        Point whole = rounded(point);
        if (!whole.equals(points.get(points.size() - 1))) {
            points.add(whole);
        }
    }

    private static Point step(Point from, double degrees, double length) {
        double angle = StrictMath.toRadians(degrees);
        return new Point(from.x() + length * StrictMath.cos(angle), from.z() + length * StrictMath.sin(angle));
    }

    private static Point onCurve(Point a, Point b, Point c, Point e, double t) {
        double s = 1 - t;
        double wa = s * s * s;
        double wb = 3 * s * s * t;
        double wc = 3 * s * t * t;
        double we = t * t * t;
        return new Point(
                wa * a.x() + wb * b.x() + wc * c.x() + we * e.x(), wa * a.z() + wb * b.z() + wc * c.z() + we * e.z());
    }

    /** To whole mm, as one reads them off a drawing. */
    static Point rounded(Point point) {
        return new Point(StrictMath.rint(point.x()), StrictMath.rint(point.z()));
    }

    /** The points taken off, in order. */
    List<Point> points() {
        return List.copyOf(points);
    }
}
