package studio.stancebook.geometry;

import java.util.List;
import java.util.Optional;

/**
 * Finds the point of an underbody that limits the ramp angle: the least sum F of the two tangent inclinations.
 *
 * <p>Along a straight edge F has at most one stationary point outside the shadows of the tyres, and it is a minimum. For
 * the points of equal F lie on a limacon (the corner of a rigid wedge that slides on two circles), with radius rho = c / (2
 * sin F) of its base circle and arm w, where c is the distance of the wheel centres and (w sin F)^2 = r^2 + s^2 - 2 r s cos
 * F for the radii r and s. Its curvature has the sign of 8 rho^2 + w^2 + 6 rho w cos(m) for some angle m, which is at least
 * (w - 2 rho)(w - 4 rho) and so positive while w < 2 rho, that is while the tyres do not overlap. F grows outward of that
 * curve; where an edge is tangent to one, F therefore is least on it. So an edge needs a search only where F falls from
 * both its ends inward, and there the zero of the derivative is the minimum.
 */
final class RampSearch {

    private static final int MOST_STEPS = 100;
    private static final double BRACKET = 1e-13;

    private final TyreArc frontTyre;
    private final TyreArc rearTyre;
    private final Ridge probe;
    private final Ridge pieceStart;
    private final Ridge pieceEnd;

    private double leastHalfTangent = Double.POSITIVE_INFINITY;
    private double touchX;
    private double touchZ;

    RampSearch(TyreArc frontTyre, TyreArc rearTyre) {
        this.frontTyre = frontTyre;
        this.rearTyre = rearTyre;
        this.probe = new Ridge(frontTyre, rearTyre);
        this.pieceStart = new Ridge(frontTyre, rearTyre);
        this.pieceEnd = new Ridge(frontTyre, rearTyre);
    }

    /** The ramp angle, or empty when no part of the underbody limits it. */
    Optional<LimitedAngle> along(List<Point> underbody) {
        Ridge before = new Ridge(frontTyre, rearTyre);
        Ridge here = new Ridge(frontTyre, rearTyre);
        boolean first = true;
        for (Point point : underbody) {
            here.moveTo(point);
            if (here.limits()) {
                offer(here);
            }
            if (!first) {
                edge(before, here);
            }
            first = false;
            Ridge spare = before;
            before = here;
            here = spare;
        }
        return leastHalfTangent == Double.POSITIVE_INFINITY ? Optional.empty() : Optional.of(limited());
    }

    private LimitedAngle limited() {
        probe.moveTo(touchX, touchZ);
        return LimitedAngle.of(
                probe.angleRad(),
                new Point(touchX, touchZ),
                probe.front().rates(),
                probe.rear().rates());
    }

    private void offer(Ridge ridge) {
        double halfTangent = ridge.halfTangent();
        if (halfTangent < leastHalfTangent) {
            leastHalfTangent = halfTangent;
            touchX = ridge.x();
            touchZ = ridge.z();
        }
    }

    private void edge(Ridge from, Ridge to) {
        if (from.clearOfTyres() && to.clearOfTyres()) {
            inside(from, to);
        } else if (!from.sharesBarTo(to)) {
            outsideShadows(from, to);
        }
    }

    private void outsideShadows(Ridge from, Ridge to) {
        double dx = to.x() - from.x();
        double dz = to.z() - from.z();
        EdgeShadow front = EdgeShadow.of(frontTyre, from.x(), from.z(), dx, dz);
        EdgeShadow rear = EdgeShadow.of(rearTyre, from.x(), from.z(), dx, dz);
        boolean frontFirst = front.enter() <= rear.enter();
        betweenAxles(from, dx, dz, frontFirst ? front : rear, frontFirst ? rear : front);
    }

    private void betweenAxles(Ridge from, double dx, double dz, EdgeShadow first, EdgeShadow second) {
        double atFront = (frontTyre.centreX() - from.x()) / dx;
        double atRear = (rearTyre.centreX() - from.x()) / dx;
        double start = dx == 0 ? 0 : Math.max(0, Math.min(atFront, atRear));
        double end = dx == 0 ? 1 : Math.min(1, Math.max(atFront, atRear));
        piece(from, dx, dz, start, Math.min(first.enter(), end));
        double afterFirst = first.missed() ? start : Math.max(start, first.leave());
        piece(from, dx, dz, afterFirst, Math.min(second.enter(), end));
        piece(from, dx, dz, second.missed() ? afterFirst : Math.max(afterFirst, second.leave()), end);
    }

    private void piece(Ridge from, double dx, double dz, double start, double end) {
        if (!(start < end)) {
            return;
        }
        pieceStart.moveTo(from.x() + start * dx, from.z() + start * dz);
        pieceEnd.moveTo(from.x() + end * dx, from.z() + end * dz);
        offer(pieceStart);
        offer(pieceEnd);
        inside(pieceStart, pieceEnd);
    }

    private void inside(Ridge from, Ridge to) {
        double dx = to.x() - from.x();
        double dz = to.z() - from.z();
        double slopeFrom = from.slope(dx, dz);
        double slopeTo = to.slope(dx, dz);
        if (slopeFrom < 0 && slopeTo > 0 && from.leastHalfTangentTo(to) < leastHalfTangent) {
            moveProbeToLevel(from, dx, dz, slopeFrom, slopeTo);
            offer(probe);
        }
    }

    /** Regula falsi with the Illinois weights: the end that stays twice counts half. */
    private void moveProbeToLevel(Ridge from, double dx, double dz, double slopeFrom, double slopeTo) {
        double low = 0;
        double high = 1;
        double slopeLow = slopeFrom;
        double slopeHigh = slopeTo;
        boolean movedLow = false;
        for (int step = 0; step < MOST_STEPS && high - low > BRACKET; step++) {
            double t = crossing(low, high, slopeLow, slopeHigh);
            probe.moveTo(from.x() + t * dx, from.z() + t * dz);
            double slope = probe.slope(dx, dz);
            if (slope == 0) {
                return;
            }
            boolean again = step > 0 && movedLow == slope < 0;
            movedLow = slope < 0;
            if (movedLow) {
                low = t;
                slopeLow = slope;
                slopeHigh = again ? slopeHigh / 2 : slopeHigh;
            } else {
                high = t;
                slopeHigh = slope;
                slopeLow = again ? slopeLow / 2 : slopeLow;
            }
        }
    }

    private static double crossing(double low, double high, double slopeLow, double slopeHigh) {
        double t = low + (high - low) * (slopeLow / (slopeLow - slopeHigh));
        return low < t && t < high ? t : low + (high - low) / 2;
    }
}
