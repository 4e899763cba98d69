package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Disagreement.UnitAmounts;

/**
 * Compares what was recorded twice. Two values disagree when they differ by more than twice their joint standard
 * uncertainty, at least 2 mm, a thousandth of the wheelbase of a sketch without dimensions, or 0.5 degrees (studio decisions
 * 0005 and 0084).
 */
public final class ClosingChecks {

    private static final double FLOOR_MM = 2;
    private static final double FLOOR_OF_SKETCH_BY_WHEELBASE = 0.001;
    private static final double FLOOR_DEG = 0.5;
    private static final double COVERAGE = 2;

    private final DimensionSet set;
    private final Readings readings;
    private final List<Disagreement> found = new ArrayList<>();

    private ClosingChecks(DimensionSet set) {
        this.set = set;
        this.readings = new Readings(set);
    }

    /** What does not close, within the set alone; angles against the underbody are compared where they are computed. */
    public static List<Disagreement> of(DimensionSet set) {
        ClosingChecks checks = new ClosingChecks(set);
        checks.lengths();
        checks.landmarks();
        checks.clearance();
        for (Axle axle : Axle.values()) {
            checks.found.addAll(TyreChecks.of(set, axle));
        }
        checks.slopes();
        checks.found.addAll(OutlineChecks.of(set, checks.readings));
        checks.found.addAll(LandmarkOrder.of(set));
        return List.copyOf(checks.found);
    }

    /**
     * What a value that is recorded is not confirmed by; empty where it is.
     *
     * @param keys the JSON names of the values involved, the recorded one first
     * @param label of the recorded value
     */
    public static Optional<Disagreement> compared(
            DimensionSet set, List<String> keys, String label, Estimate recorded, Estimate derived, Unit unit) {
        double allowed = allowed(recorded.minus(derived), set, unit);
        return Math.abs(recorded.value() - derived.value()) <= allowed
                ? Optional.empty()
                : Optional.of(Disagreement.notClosing(
                        keys, label, recorded.value(), derived.value(), allowed, UnitAmounts.of(unit, set.scale())));
    }

    /** How far apart the two sides of {@code difference} may be. */
    private static double allowed(Estimate difference, DimensionSet set, Unit unit) {
        return allowed(difference.uncertainty(set::standardUncertainty), set, unit);
    }

    static double allowed(double jointUncertainty, DimensionSet set, Unit unit) {
        return Math.max(unit == Unit.DEG ? FLOOR_DEG : floorOfLengths(set), COVERAGE * jointUncertainty);
    }

    private static double floorOfLengths(DimensionSet set) {
        return set.scale() == Scale.UNSCALED
                ? FLOOR_OF_SKETCH_BY_WHEELBASE * set.scalar(Dimension.WHEELBASE).orElseThrow()
                : FLOOR_MM;
    }

    private void lengths() {
        Estimate length = scalar(Dimension.OVERALL_LENGTH);
        Estimate front = scalar(Dimension.FRONT_OVERHANG);
        Estimate rear = scalar(Dimension.REAR_OVERHANG);
        Estimate wheelbase = scalar(Dimension.WHEELBASE);
        if (length != null && front != null && rear != null && wheelbase != null) {
            compare(
                    "Overall length",
                    length,
                    front.plus(wheelbase).plus(rear),
                    Unit.MM,
                    List.of("overallLength", "frontOverhang", "wheelbase", "rearOverhang"));
        }
    }

    private void landmarks() {
        against(Dimension.OVERALL_HEIGHT, Landmark.ROOF_APEX, z(Landmark.ROOF_APEX));
        against(Dimension.SEAT_HEIGHT, Landmark.H_POINT, z(Landmark.H_POINT));
        against(Dimension.COWL_HEIGHT, Landmark.COWL, z(Landmark.COWL));
        against(Dimension.DASH_TO_AXLE, Landmark.COWL, x(Landmark.COWL));
        Estimate rocker = scalar(Dimension.ROCKER_HEIGHT);
        Estimate front = z(Landmark.ROCKER_FRONT);
        Estimate rear = z(Landmark.ROCKER_REAR);
        if (rocker != null && front != null && rear != null) {
            compare(
                    Dimension.ROCKER_HEIGHT.label(),
                    rocker,
                    front.plus(rear).times(0.5),
                    Unit.MM,
                    List.of("rockerHeight", "rockerFront", "rockerRear"));
        }
    }

    /**
     * H156 against the lowest point of the underbody. One that is recorded in part gives what the clearance is at most, so a
     * smaller recorded clearance agrees with it.
     */
    private void clearance() {
        Estimate typed = scalar(Dimension.GROUND_CLEARANCE);
        Estimate derived = Readings.lowestOfUnderbody(set);
        if (typed != null && derived != null && (typed.value() > derived.value() || wholeUnderbody())) {
            compare(
                    Dimension.GROUND_CLEARANCE.label(),
                    typed,
                    derived,
                    Unit.MM,
                    List.of(Dimension.GROUND_CLEARANCE.key(), Polyline.UNDERBODY.key()));
        }
    }

    private boolean wholeUnderbody() {
        return UnderbodyExtent.of(readings).wholeVehicle();
    }

    private void against(Dimension dimension, Landmark landmark, @Nullable Estimate derived) {
        Estimate typed = scalar(dimension);
        if (typed != null && derived != null) {
            compare(dimension.label(), typed, derived, dimension.unit(), List.of(dimension.key(), landmark.key()));
        }
    }

    private void slopes() {
        slope(Dimension.SCREEN_ANGLE, Reading.SCREEN_ANGLE, List.of("cowl", "screenTop"));
        slope(Dimension.BACKLIGHT_ANGLE, Reading.BACKLIGHT_ANGLE, List.of("backlightTop", "backlightBase"));
    }

    private void slope(Dimension dimension, Reading reading, List<String> landmarks) {
        Estimate typed = scalar(dimension);
        if (typed != null) {
            List<String> keys = new ArrayList<>(List.of(dimension.key()));
            keys.addAll(landmarks);
            compare(dimension.label(), typed, readings.get(reading), Unit.DEG, keys);
        }
    }

    private void compare(String label, Estimate recorded, Estimate derived, Unit unit, List<String> keys) {
        compared(set, keys, label, recorded, derived, unit).ifPresent(found::add);
    }

    private @Nullable Estimate scalar(Dimension dimension) {
        OptionalDouble value = set.scalar(dimension);
        return value.isPresent() ? Estimate.of(Variable.of(dimension), value.getAsDouble()) : null;
    }

    private @Nullable Estimate x(Landmark landmark) {
        Place place = Place.of(set, landmark);
        return place == null ? null : place.x();
    }

    private @Nullable Estimate z(Landmark landmark) {
        Place place = Place.of(set, landmark);
        return place == null ? null : place.z();
    }
}
