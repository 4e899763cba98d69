package studio.stancebook.geometry;

/**
 * The two planes, one touching each tyre from below, that meet at a movable point between the axles. Their inclinations
 * add up to the ramp angle that this point allows.
 *
 * <p>Mutable, so that thousands of points are examined without allocation.
 */
final class Ridge {

    private final TangentPlane front;
    private final TangentPlane rear;
    private double x;
    private double z;

    Ridge(TyreArc front, TyreArc rear) {
        this.front = TangentPlane.behind(front);
        this.rear = TangentPlane.ahead(rear);
    }

    void moveTo(Point point) {
        moveTo(point.x(), point.z());
    }

    void moveTo(double newX, double newZ) {
        x = newX;
        z = newZ;
        front.moveTo(newX, newZ);
        rear.moveTo(newX, newZ);
    }

    double x() {
        return x;
    }

    double z() {
        return z;
    }

    /** Whether the point can limit the ramp angle: between the axles and in no tyre's shadow. */
    boolean limits() {
        return front.reachesPoint() && rear.reachesPoint();
    }

    /** Whether the point lies beyond every part of both tyres. */
    boolean clearOfTyres() {
        return front.pointClearOfTyre() && rear.pointClearOfTyre();
    }

    /** Whether no part of the straight edge to {@code other} can limit the ramp angle. */
    boolean sharesBarTo(Ridge other) {
        return front.pointOnOtherSide() && other.front.pointOnOtherSide()
                || rear.pointOnOtherSide() && other.rear.pointOnOtherSide()
                || front.pointInShadow() && other.front.pointInShadow()
                || rear.pointInShadow() && other.rear.pointInShadow();
    }

    /** Sum of the two inclinations, rad. */
    double angleRad() {
        return front.angleRad() + rear.angleRad();
    }

    /** Tangent of half the sum of the inclinations, which orders points as the sum does. */
    double halfTangent() {
        return halfTangent(front, rear);
    }

    /**
     * At most the half tangent of any point on the straight edge to {@code other}. Along an edge each inclination by itself
     * only rises or only falls (the points of equal inclination are a ray, which an edge crosses once), so it is least at
     * an end.
     */
    double leastHalfTangentTo(Ridge other) {
        return halfTangent(flatter(front, other.front), flatter(rear, other.rear));
    }

    /** Has the sign of the derivative of the sum of the inclinations in direction (dx, dz); finite at a tyre outline. */
    double slope(double dx, double dz) {
        return front.opening(dx, dz) * rear.length() * rear.square()
                + rear.opening(dx, dz) * front.length() * front.square();
    }

    TangentPlane front() {
        return front;
    }

    TangentPlane rear() {
        return rear;
    }

    private static TangentPlane flatter(TangentPlane one, TangentPlane other) {
        return one.sine() * other.cosine() <= one.cosine() * other.sine() ? one : other;
    }

    /** tan((a + b) / 2) = sin(a + b) / (1 + cos(a + b)), for a + b below 180 degrees; infinite from there on. */
    private static double halfTangent(TangentPlane a, TangentPlane b) {
        double sine = a.sine() * b.cosine() + a.cosine() * b.sine();
        double cosine = a.cosine() * b.cosine() - a.sine() * b.sine();
        double onePlusCosine = a.square() * b.square() + cosine;
        boolean beyondStraight = sine < 0 && a.sine() >= 0 && b.sine() >= 0;
        return beyondStraight || onePlusCosine <= 0 ? Double.POSITIVE_INFINITY : sine / onePlusCosine;
    }
}
