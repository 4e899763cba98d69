package studio.stancebook.geometry;

import java.util.List;
import java.util.Optional;

/** Finds the point of an underbody that limits the approach angle, or the departure angle; see {@link UnderbodyAngles}. */
final class OverhangSearch {

    private final TyreArc tyre;
    private final boolean front;
    private final TangentPlane plane;

    private double leastTangent = Double.POSITIVE_INFINITY;
    private double touchX;
    private double touchZ;

    OverhangSearch(TyreArc tyre, boolean front) {
        this.tyre = tyre;
        this.front = front;
        this.plane = front ? TangentPlane.ahead(tyre) : TangentPlane.behind(tyre);
    }

    Optional<LimitedAngle> along(List<Point> underbody) {
        double beforeX = Double.NaN;
        double beforeZ = Double.NaN;
        for (Point point : underbody) {
            crossing(beforeX, beforeZ, point);
            plane.moveTo(point.x(), point.z());
            if (plane.reachesPoint()) {
                offer(point.x(), point.z());
            }
            beforeX = point.x();
            beforeZ = point.z();
        }
        return leastTangent == Double.POSITIVE_INFINITY ? Optional.empty() : Optional.of(limited());
    }

    /** Where an edge crosses the axle plane it is clipped; that matters only below the tyre. */
    private void crossing(double beforeX, double beforeZ, Point point) {
        double axle = tyre.centreX();
        if (beforeX < axle && axle < point.x() || point.x() < axle && axle < beforeX) {
            double z = beforeZ + (axle - beforeX) * (point.z() - beforeZ) / (point.x() - beforeX);
            plane.moveTo(axle, z);
            if (plane.pointBelowTyre()) {
                offer(axle, z);
            }
        }
    }

    private void offer(double x, double z) {
        double tangent = plane.tangent();
        if (tangent < leastTangent) {
            leastTangent = tangent;
            touchX = x;
            touchZ = z;
        }
    }

    private LimitedAngle limited() {
        plane.moveTo(touchX, touchZ);
        Point touch = new Point(touchX, touchZ);
        PlaneRates rates = plane.rates();
        return LimitedAngle.of(
                plane.angleRad(), touch, front ? rates : PlaneRates.NONE, front ? PlaneRates.NONE : rates);
    }
}
