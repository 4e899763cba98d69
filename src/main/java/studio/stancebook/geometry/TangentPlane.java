package studio.stancebook.geometry;

/**
 * The plane that touches a tyre from below and passes through a movable point on one side of it.
 *
 * <p>With the point u beyond the wheel centre and v above it, d = hypot(u, v) and tangent length l = sqrt(d^2 - r^2), the
 * plane rises by the angle a = atan2(v, u) + asin(r / d). Then d^2 sin a = v l + u r and d^2 cos a = u l - v r, so angles
 * can be compared without trigonometry. Moving the point by w turns the plane by (n . w) / l, where n is the upward normal
 * of the plane.
 *
 * <p>The tyre's shadow is what no plane of at most 90 degrees can reach first: the tyre itself and what is above its
 * lower half. It is convex, so a straight edge enters it at most once.
 *
 * <p>Mutable, so that thousands of points are examined without allocation.
 */
final class TangentPlane {

    private final double centreX;
    private final double centreHeight;
    private final double radius;
    private final double side;

    private double beyond;
    private double above;
    private double square;
    private double length;
    private double sine;
    private double cosine;

    private TangentPlane(TyreArc tyre, double side) {
        this.centreX = tyre.centreX();
        this.centreHeight = tyre.centreHeight();
        this.radius = tyre.radius();
        this.side = side;
    }

    /** For points ahead of the tyre. */
    static TangentPlane ahead(TyreArc tyre) {
        return new TangentPlane(tyre, -1);
    }

    /** For points behind the tyre. */
    static TangentPlane behind(TyreArc tyre) {
        return new TangentPlane(tyre, 1);
    }

    void moveTo(double x, double z) {
        beyond = side * (x - centreX);
        above = z - centreHeight;
        square = beyond * beyond + above * above;
        length = Math.sqrt(Math.max(0, square - radius * radius));
        sine = above * length + beyond * radius;
        cosine = beyond * length - above * radius;
    }

    /** Whether the point is on this side of the wheel centre and outside the shadow. */
    boolean reachesPoint() {
        return beyond > 0 && !pointInShadow();
    }

    /** Whether the point is farther from the wheel centre than any part of the tyre, horizontally. */
    boolean pointClearOfTyre() {
        return beyond >= radius && square > 0;
    }

    boolean pointOnOtherSide() {
        return beyond < 0;
    }

    boolean pointInShadow() {
        return Math.abs(beyond) < radius && (above > 0 || square < radius * radius);
    }

    boolean pointBelowTyre() {
        return above < -radius;
    }

    /** Tangent of the angle, which orders angles up to 90 degrees; infinite from there on. */
    double tangent() {
        if (cosine > 0) {
            return sine / cosine;
        }
        return sine < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }

    double angleRad() {
        return Math.atan2(sine, cosine);
    }

    /** d^2 times the sine of the angle. */
    double sine() {
        return sine;
    }

    /** d^2 times the cosine of the angle. */
    double cosine() {
        return cosine;
    }

    /** d^2. */
    double square() {
        return square;
    }

    /** Distance along the plane from the point to the tyre. */
    double length() {
        return length;
    }

    /** d^2 times (n . w), for w = (dx, dz): positive when moving the point so makes the angle larger. */
    double opening(double dx, double dz) {
        return cosine * dz - side * sine * dx;
    }

    PlaneRates rates() {
        double scale = Math.toDegrees(1) / length;
        return new PlaneRates(-side * sine / square * scale, cosine / square * scale, scale);
    }
}
