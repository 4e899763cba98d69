package studio.stancebook.geometry;

import java.util.Optional;

/**
 * An underbody angle and what limits it.
 *
 * @param deg the angle, degrees: from 0 to below 90 for approach and departure, from 0 to below 180 for the ramp
 * @param touch the point of the body that the plane touches first; of several the foremost in the polyline
 * @param partials the sensitivities; empty where the touch lies exactly on the tyre outline, where they are infinite
 */
public record LimitedAngle(double deg, Point touch, Optional<AnglePartials> partials) {

    /** The angle made up of a plane at the front tyre and one at the rear tyre, or of one of them; held at 0 below that. */
    static LimitedAngle of(double angleRad, Point touch, PlaneRates front, PlaneRates rear) {
        return angleRad <= 0
                ? new LimitedAngle(0, touch, Optional.of(AnglePartials.NONE))
                : new LimitedAngle(Math.toDegrees(angleRad), touch, AnglePartials.ofSum(front, rear));
    }
}
