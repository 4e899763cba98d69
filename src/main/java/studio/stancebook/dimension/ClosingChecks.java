package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Compares what was recorded twice. Two values disagree when they differ by more than twice their joint standard
 * uncertainty, at least 2 mm or 0.5 degrees (the latter: studio decision 0005).
 */
public final class ClosingChecks {

    private static final double FLOOR_MM = 2;
    private static final double FLOOR_DEG = 0.5;
    private static final double COVERAGE = 2;

    private final DimensionSet set;
    private final List<Disagreement> found = new ArrayList<>();

    private ClosingChecks(DimensionSet set) {
        this.set = set;
    }

    /** What does not close, within the set alone; angles against the underbody are compared where they are computed. */
    public static List<Disagreement> of(DimensionSet set) {
        ClosingChecks checks = new ClosingChecks(set);
        checks.lengths();
        checks.landmarks();
        checks.clearance();
        checks.tyres();
        checks.slopes();
        return List.copyOf(checks.found);
    }

    /**
     * Whether a typed value and a computed one disagree.
     *
     * @param typed the typed value and its standard uncertainty
     * @param computed the computed value and its standard uncertainty
     */
    public static boolean disagree(Estimate typed, Estimate computed, DimensionSet set, Unit unit) {
        return Math.abs(typed.value() - computed.value()) > allowed(typed.minus(computed), set, unit);
    }

    /** How far apart the two sides of {@code difference} may be. */
    public static double allowed(Estimate difference, DimensionSet set, Unit unit) {
        double floor = unit == Unit.DEG ? FLOOR_DEG : FLOOR_MM;
        return Math.max(floor, COVERAGE * difference.uncertainty(set::standardUncertainty));
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
        return UnderbodyExtent.of(new Readings(set)).wholeVehicle();
    }

    private void against(Dimension dimension, Landmark landmark, @Nullable Estimate derived) {
        Estimate typed = scalar(dimension);
        if (typed != null && derived != null) {
            compare(dimension.label(), typed, derived, dimension.unit(), List.of(dimension.key(), landmark.key()));
        }
    }

    private void tyres() {
        for (Axle axle : Axle.values()) {
            OptionalDouble typed = set.scalar(axle.tyreDiameter());
            if (typed.isPresent() && set.tyre(axle).isPresent()) {
                double rule = set.tyreDiameter(axle).orElseThrow();
                tyre(axle, typed.getAsDouble(), rule);
            }
        }
    }

    private void tyre(Axle axle, double typed, double rule) {
        double share = DimensionSet.DESIGNATION_UNCERTAINTY_SHARE * rule;
        double own = set.originOf(axle.tyreDiameter().key()).defaultUncertainty(Unit.MM);
        double allowed = Math.max(FLOOR_MM, COVERAGE * Math.hypot(share, own));
        if (Math.abs(typed - rule) > allowed) {
            found.add(new Disagreement(
                    List.of(axle.tyreDiameter().key(), axle.tyreKey()),
                    axle.tyreDiameter().label(),
                    typed,
                    rule,
                    allowed,
                    Unit.MM));
        }
    }

    private void slopes() {
        Readings readings = new Readings(set);
        slope(readings, Dimension.SCREEN_ANGLE, Reading.SCREEN_ANGLE, List.of("cowl", "screenTop"));
        slope(readings, Dimension.BACKLIGHT_ANGLE, Reading.BACKLIGHT_ANGLE, List.of("backlightTop", "backlightBase"));
    }

    private void slope(Readings readings, Dimension dimension, Reading reading, List<String> landmarks) {
        Estimate typed = scalar(dimension);
        if (typed != null) {
            List<String> keys = new ArrayList<>(List.of(dimension.key()));
            keys.addAll(landmarks);
            compare(dimension.label(), typed, readings.get(reading), Unit.DEG, keys);
        }
    }

    private void compare(String label, Estimate recorded, Estimate derived, Unit unit, List<String> keys) {
        if (disagree(recorded, derived, set, unit)) {
            double allowed = allowed(recorded.minus(derived), set, unit);
            found.add(new Disagreement(keys, label, recorded.value(), derived.value(), allowed, unit));
        }
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
