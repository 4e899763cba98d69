package studio.stancebook.geometry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.quantity.NumberText;

/**
 * Approach, departure and ramp angle of a side view and the clearance between the axles (49 CFR 523.2; ISO 612). Each angle
 * is between the ground and a plane that touches a tyre arc from below.
 *
 * <p>Approach: the smallest angle from 0 at which a body point ahead of the front axle would lie below the plane. A point u
 * ahead of the wheel centre and v above it, at a distance d of at least the radius r, allows atan2(v, u) + asin(r / d).
 * Points inside the tyre outline never bind, nor does anything from 90 degrees on. A straight edge never binds before both
 * of its ends do, also not where it leaves the tyre outline: what is above a plane is convex, and the part of an edge below
 * the tangent at the outline leads to an end that is below it too. So the points of the polyline suffice.
 *
 * <p>Departure: the mirror image at the rear axle.
 *
 * <p>Ramp: for a point between the axles the sum of the two tangent inclinations to it, one from each tyre; the ramp angle is
 * the least sum over all points and all edges, see {@link RampSearch}. A point to which a plane would have to be steeper
 * than 90 degrees, that is one above a tyre, does not count.
 *
 * <p>A point below the ground or below a tyre holds the angle at 0. Scaling everything, mirroring, and more points on a
 * straight edge change nothing but rounding errors, about 1e-12 degree; angles are exact to that.
 *
 * @param approach the approach angle; empty when nothing limits it up to 90 degrees
 * @param departure the departure angle; empty when nothing limits it up to 90 degrees
 * @param ramp the ramp angle; empty when nothing between the axles limits it
 * @param lowest the lowest point of the underbody between the axles, also where a tyre hides it in the side view; empty
 *     when the underbody has no part there
 */
public record UnderbodyAngles(
        Optional<LimitedAngle> approach,
        Optional<LimitedAngle> departure,
        Optional<LimitedAngle> ramp,
        Optional<Point> lowest) {

    private static final double WHEELBASE_TOLERANCE = 1e-9;

    /**
     * @param wheelbaseMm horizontal distance of the wheel centres, mm
     * @param front the front tyre
     * @param rear the rear tyre, {@code wheelbaseMm} behind it
     * @param underbody the rigid parts of the underbody as a polyline, mm, one point or more, in any direction
     * @throws DegenerateShape if the wheelbase is not above 0 or less than the sum of the radii
     * @throws IllegalArgumentException if the underbody has no point or the wheel centres are not a wheelbase apart
     */
    public static UnderbodyAngles of(double wheelbaseMm, TyreArc front, TyreArc rear, List<Point> underbody) {
        requireApart(wheelbaseMm, front, rear);
        if (underbody.isEmpty()) {
            throw new IllegalArgumentException("An underbody needs one point or more; got none");
        }
        return new UnderbodyAngles(
                new OverhangSearch(front, true).along(underbody),
                new OverhangSearch(rear, false).along(underbody),
                new RampSearch(front, rear).along(underbody),
                new LowestPoint(front.centreX(), rear.centreX()).of(underbody));
    }

    /** Degrees, from 0 to below 90; empty when not limited. */
    public OptionalDouble approachDeg() {
        return degrees(approach);
    }

    /** Degrees, from 0 to below 90; empty when not limited. */
    public OptionalDouble departureDeg() {
        return degrees(departure);
    }

    /** Degrees, from 0 to below 180; empty when not limited. */
    public OptionalDouble rampDeg() {
        return degrees(ramp);
    }

    /** The point that limits the approach angle. */
    public Optional<Point> approachTouch() {
        return approach.map(LimitedAngle::touch);
    }

    /** The point that limits the departure angle. */
    public Optional<Point> departureTouch() {
        return departure.map(LimitedAngle::touch);
    }

    /** The point that limits the ramp angle, a point of the polyline or one inside an edge. */
    public Optional<Point> rampTouch() {
        return ramp.map(LimitedAngle::touch);
    }

    /** Clearance between the axles: the height of the lowest point there, mm. */
    public OptionalDouble groundClearanceMm() {
        return lowest.isPresent() ? OptionalDouble.of(lowest.get().z()) : OptionalDouble.empty();
    }

    private static OptionalDouble degrees(Optional<LimitedAngle> angle) {
        return angle.isPresent() ? OptionalDouble.of(angle.get().deg()) : OptionalDouble.empty();
    }

    private static void requireApart(double wheelbaseMm, TyreArc front, TyreArc rear) {
        double apart = rear.centreX() - front.centreX();
        if (!(Math.abs(apart - wheelbaseMm) <= WHEELBASE_TOLERANCE * Math.abs(wheelbaseMm))) {
            throw new IllegalArgumentException(
                    "Wheel centres " + apart + " apart do not make a wheelbase of " + wheelbaseMm);
        }
        if (!(wheelbaseMm > 0) || wheelbaseMm < front.radius() + rear.radius()) {
            throw new DegenerateShape(
                    "wheelbase",
                    "A wheelbase of " + NumberText.plain(wheelbaseMm, 1)
                            + " mm is not accepted with tyre radii of " + NumberText.plain(front.radius(), 1) + " and "
                            + NumberText.plain(rear.radius(), 1)
                            + " mm: it must be above 0 and at least the sum of the radii.");
        }
    }
}
