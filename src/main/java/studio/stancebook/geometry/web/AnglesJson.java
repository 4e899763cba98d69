package studio.stancebook.geometry.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;
import studio.stancebook.geometry.UnderbodyAngles;

/**
 * Underbody angles as the API tells them; null where nothing limits an angle.
 *
 * @param approachTouch the point {@code [x, z]} that limits the angle, likewise the others
 * @param groundClearanceMm height of the lowest point between the axles
 * @param tyreModel how the tyres were taken
 * @param notes what else a reader must know
 */
record AnglesJson(
        @Nullable Double approachDeg,
        @Nullable Double departureDeg,
        @Nullable Double rampDeg,
        @Nullable List<Double> approachTouch,
        @Nullable List<Double> departureTouch,
        @Nullable List<Double> rampTouch,
        @Nullable Double groundClearanceMm,
        String tyreModel,
        List<String> notes) {

    private static final String TYRE_MODEL = "arc of the static loaded radius";

    static AnglesJson of(UnderbodyAngles angles, List<String> notes) {
        return new AnglesJson(
                orNull(angles.approachDeg()),
                orNull(angles.departureDeg()),
                orNull(angles.rampDeg()),
                orNull(angles.approachTouch()),
                orNull(angles.departureTouch()),
                orNull(angles.rampTouch()),
                orNull(angles.groundClearanceMm()),
                TYRE_MODEL,
                List.copyOf(notes));
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static @Nullable List<Double> orNull(Optional<Point> point) {
        return point.map(one -> List.of(one.x(), one.z())).orElse(null);
    }
}
