package studio.stancebook.dimension.reshaping;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.geometry.Point;
import studio.stancebook.geometry.TyreArc;
import studio.stancebook.geometry.UnderbodyAngles;

/**
 * Dimensions that are recorded although landmarks or lines give them as well. They keep their difference from what the
 * geometry gives, so that what agreed goes on agreeing.
 */
final class SecondReadings {

    private static final List<Dimension> READ_TWICE = List.of(
            Dimension.OVERALL_HEIGHT,
            Dimension.GROUND_CLEARANCE,
            Dimension.ROCKER_HEIGHT,
            Dimension.COWL_HEIGHT,
            Dimension.DASH_TO_AXLE,
            Dimension.SEAT_HEIGHT,
            Dimension.SCREEN_ANGLE,
            Dimension.BACKLIGHT_ANGLE,
            Dimension.APPROACH_ANGLE,
            Dimension.DEPARTURE_ANGLE,
            Dimension.RAMP_ANGLE);

    private final DimensionSet before;
    private final DimensionSet after;
    private final Quantum quantum;

    SecondReadings(DimensionSet before, DimensionSet after, Quantum quantum) {
        this.before = before;
        this.after = after;
        this.quantum = quantum;
    }

    /** The set with each of them moved as far as what the geometry gives has moved. */
    DimensionSet following() {
        DimensionSetBuilder builder = after.toBuilder();
        for (Dimension dimension : READ_TWICE) {
            OptionalDouble recorded = after.scalar(dimension);
            OptionalDouble then = fromGeometry(dimension, before);
            OptionalDouble now = fromGeometry(dimension, after);
            boolean itself = !recorded.equals(before.scalar(dimension));
            if (!itself && recorded.isPresent() && then.isPresent() && now.isPresent()) {
                double by = now.getAsDouble() - then.getAsDouble();
                if (Math.abs(by) > 1e-9) {
                    builder.set(dimension, quantum.of(dimension, recorded.getAsDouble() + by));
                }
            }
        }
        return builder.build();
    }

    private static OptionalDouble fromGeometry(Dimension dimension, DimensionSet set) {
        return switch (dimension) {
            case OVERALL_HEIGHT -> of(set, Landmark.ROOF_APEX, Point::z);
            case GROUND_CLEARANCE ->
                set.points(Polyline.UNDERBODY).stream().mapToDouble(Point::z).min();
            case ROCKER_HEIGHT ->
                mean(of(set, Landmark.ROCKER_FRONT, Point::z), of(set, Landmark.ROCKER_REAR, Point::z));
            case COWL_HEIGHT -> of(set, Landmark.COWL, Point::z);
            case DASH_TO_AXLE -> of(set, Landmark.COWL, Point::x);
            case SEAT_HEIGHT -> of(set, Landmark.H_POINT, Point::z);
            case SCREEN_ANGLE ->
                set.landmarks().keySet().containsAll(List.of(Landmark.COWL, Landmark.SCREEN_TOP))
                        ? reading(set, Reading.SCREEN_ANGLE)
                        : OptionalDouble.empty();
            case BACKLIGHT_ANGLE ->
                set.landmarks().keySet().containsAll(List.of(Landmark.BACKLIGHT_TOP, Landmark.BACKLIGHT_BASE))
                        ? reading(set, Reading.BACKLIGHT_ANGLE)
                        : OptionalDouble.empty();
            default -> ofUnderbody(dimension, set);
        };
    }

    private static OptionalDouble ofUnderbody(Dimension dimension, DimensionSet set) {
        if (set.points(Polyline.UNDERBODY).isEmpty()) {
            return OptionalDouble.empty();
        }
        Readings readings = new Readings(set);
        if (!readings.has(Reading.FRONT_CENTRE_HEIGHT) || !readings.has(Reading.REAR_CENTRE_HEIGHT)) {
            return OptionalDouble.empty();
        }
        double wheelbase = readings.get(Reading.WHEELBASE).value();
        UnderbodyAngles angles = UnderbodyAngles.of(
                wheelbase,
                tyre(readings, Axle.FRONT, 0),
                tyre(readings, Axle.REAR, wheelbase),
                set.points(Polyline.UNDERBODY));
        return switch (dimension) {
            case APPROACH_ANGLE -> angles.approachDeg();
            case DEPARTURE_ANGLE -> angles.departureDeg();
            default -> angles.rampDeg();
        };
    }

    private static TyreArc tyre(Readings readings, Axle axle, double x) {
        Reading height = axle == Axle.FRONT ? Reading.FRONT_CENTRE_HEIGHT : Reading.REAR_CENTRE_HEIGHT;
        return TyreArc.onGround(x, readings.get(height).value());
    }

    private static OptionalDouble reading(DimensionSet set, Reading reading) {
        return new Readings(set)
                .find(reading)
                .map(estimate -> OptionalDouble.of(estimate.value()))
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble of(DimensionSet set, Landmark landmark, ToDoubleFunction<Point> coordinate) {
        Map<Landmark, Point> landmarks = set.landmarks();
        Point point = landmarks.get(landmark);
        return point == null ? OptionalDouble.empty() : OptionalDouble.of(coordinate.applyAsDouble(point));
    }

    private static OptionalDouble mean(OptionalDouble first, OptionalDouble second) {
        return first.isPresent() && second.isPresent()
                ? OptionalDouble.of((first.getAsDouble() + second.getAsDouble()) / 2)
                : OptionalDouble.empty();
    }
}
