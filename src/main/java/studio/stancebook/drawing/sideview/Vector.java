package studio.stancebook.drawing.sideview;

import studio.stancebook.geometry.Point;

/** A step in the plane of the side view, mm, z upwards. */
record Vector(double x, double z) {

    static Vector between(Point from, Point to) {
        return new Vector(to.x() - from.x(), to.z() - from.z());
    }

    static Vector to(Point point) {
        return new Vector(point.x(), point.z());
    }

    /** The unit vector at that many degrees above the x axis. */
    static Vector atDeg(double degrees) {
        double angle = Math.toRadians(degrees);
        return new Vector(Math.cos(angle), Math.sin(angle));
    }

    double length() {
        return Math.hypot(x, z);
    }

    double distanceTo(Point point) {
        return Math.hypot(point.x() - x, point.z() - z);
    }

    /** Of length 1; the zero vector stays as it is. */
    Vector unit() {
        double length = length();
        return length == 0 ? this : new Vector(x / length, z / length);
    }

    Vector times(double factor) {
        return new Vector(x * factor, z * factor);
    }

    Vector plus(Vector other) {
        return new Vector(x + other.x, z + other.z);
    }

    Point from(Point origin) {
        return new Point(origin.x() + x, origin.z() + z);
    }

    /** The angle between two directions, 0 to 180 degrees. */
    double turnDeg(Vector other) {
        return Math.abs(turnFromDeg(other));
    }

    /** The angle from another direction to this one, against the clock, above -180 to 180 degrees. */
    double turnFromDeg(Vector other) {
        double cross = other.x * z - other.z * x;
        double dot = x * other.x + z * other.z;
        return Math.toDegrees(Math.atan2(cross, dot));
    }

    /** Degrees above the x axis, above -180 to 180. */
    double headingDeg() {
        return Math.toDegrees(Math.atan2(z, x));
    }
}
