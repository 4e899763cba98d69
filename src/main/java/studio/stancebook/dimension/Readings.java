package studio.stancebook.dimension;

import static studio.stancebook.dimension.Reading.*;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;

/**
 * The readings of one dimension set: recorded where recorded, derived where that can be done, absent otherwise. A
 * recorded value wins over a derived one; whether the two agree is for {@link ClosingChecks}. For angles and coordinates
 * the landmark wins over the typed scalar.
 */
public final class Readings {

    private final DimensionSet set;
    private final Map<Reading, Estimate> taken = new EnumMap<>(Reading.class);

    /** Takes every reading that the set allows. */
    public Readings(DimensionSet set) {
        this.set = set;
        lengths();
        wheels();
        heights();
        coordinates();
        midWheelbase();
        angles();
    }

    public DimensionSet set() {
        return set;
    }

    public boolean has(Reading reading) {
        return taken.containsKey(reading);
    }

    public Optional<Estimate> find(Reading reading) {
        return Optional.ofNullable(taken.get(reading));
    }

    /** @throws IllegalStateException if the reading is absent: ask {@link #has} first */
    public Estimate get(Reading reading) {
        Estimate estimate = taken.get(reading);
        if (estimate == null) {
            throw new IllegalStateException("Nothing recorded gives " + reading.key());
        }
        return estimate;
    }

    private void put(Reading reading, @Nullable Estimate estimate) {
        if (estimate != null) {
            taken.put(reading, estimate);
        }
    }

    private @Nullable Estimate recorded(Dimension dimension) {
        Double value = set.scalars().get(dimension);
        return value == null ? null : Estimate.of(Variable.of(dimension), value);
    }

    private @Nullable Estimate x(Landmark landmark) {
        Place place = Place.of(set, landmark);
        return place == null ? null : place.x();
    }

    private @Nullable Estimate z(Landmark landmark) {
        Place place = Place.of(set, landmark);
        return place == null ? null : place.z();
    }

    private static @Nullable Estimate firstOf(@Nullable Estimate first, @Nullable Estimate second) {
        return first != null ? first : second;
    }

    private void lengths() {
        put(WHEELBASE, recorded(Dimension.WHEELBASE));
        Estimate wheelbase = get(WHEELBASE);
        Estimate length = recorded(Dimension.OVERALL_LENGTH);
        Estimate front = recorded(Dimension.FRONT_OVERHANG);
        Estimate rear = recorded(Dimension.REAR_OVERHANG);
        put(OVERALL_LENGTH, length);
        put(FRONT_OVERHANG, front);
        put(REAR_OVERHANG, rear);
        if (length == null && front != null && rear != null) {
            put(OVERALL_LENGTH, front.plus(wheelbase).plus(rear));
        } else if (length != null && front == null && rear != null) {
            put(FRONT_OVERHANG, length.minus(wheelbase).minus(rear));
        } else if (length != null && front != null && rear == null) {
            put(REAR_OVERHANG, length.minus(wheelbase).minus(front));
        }
        put(OVERALL_WIDTH, recorded(Dimension.OVERALL_WIDTH));
        put(FRONT_TRACK, recorded(Dimension.FRONT_TRACK));
        put(REAR_TRACK, recorded(Dimension.REAR_TRACK));
    }

    private void wheels() {
        Estimate front = diameter(Axle.FRONT);
        Estimate rear = diameter(Axle.REAR);
        put(FRONT_TYRE_DIAMETER, front);
        put(REAR_TYRE_DIAMETER, rear);
        if (front != null && rear != null) {
            put(WHEEL_DIAMETER, front.combine((front.value() + rear.value()) / 2, 0.5, rear, 0.5));
        }
        put(FRONT_RIM_DIAMETER, rim(Axle.FRONT));
        put(REAR_RIM_DIAMETER, rim(Axle.REAR));
        put(FRONT_CENTRE_HEIGHT, centreHeight(Axle.FRONT, front));
        put(REAR_CENTRE_HEIGHT, centreHeight(Axle.REAR, rear));
    }

    private @Nullable Estimate diameter(Axle axle) {
        Variable variable = set.sameTyresAllRound() ? Variable.TYRE_DIAMETER : Variable.of(axle.tyreDiameter());
        var diameter = set.tyreDiameter(axle);
        return diameter.isPresent() ? Estimate.of(variable, diameter.getAsDouble()) : null;
    }

    private @Nullable Estimate rim(Axle axle) {
        return set.tyre(axle)
                .map(designation -> Estimate.constant(designation.rimDiameterMm()))
                .orElse(recorded(axle.rimDiameter()));
    }

    private @Nullable Estimate centreHeight(Axle axle, @Nullable Estimate diameter) {
        return firstOf(recorded(axle.loadedRadius()), diameter == null ? null : unloaded(diameter.times(0.5)));
    }

    /** The free radius stands in for the loaded one, which is smaller by the deflection of the tyre. */
    private static Estimate unloaded(Estimate freeRadius) {
        return freeRadius.combine(freeRadius.value(), 1, Estimate.of(Variable.TYRE_DEFLECTION, 0), -freeRadius.value());
    }

    private void heights() {
        put(OVERALL_HEIGHT, firstOf(recorded(Dimension.OVERALL_HEIGHT), z(Landmark.ROOF_APEX)));
        put(GROUND_CLEARANCE, firstOf(recorded(Dimension.GROUND_CLEARANCE), lowestOfUnderbody(set)));
        put(CHAIR_HEIGHT, recorded(Dimension.CHAIR_HEIGHT));
        put(SEAT_HEIGHT, firstOf(recorded(Dimension.SEAT_HEIGHT), z(Landmark.H_POINT)));
        put(ROCKER_HEIGHT, firstOf(recorded(Dimension.ROCKER_HEIGHT), meanRocker()));
        put(COWL_X, firstOf(x(Landmark.COWL), recorded(Dimension.DASH_TO_AXLE)));
        put(COWL_Z, firstOf(z(Landmark.COWL), recorded(Dimension.COWL_HEIGHT)));
    }

    /** The lowest recorded point of the underbody, held at the ground; null when none is recorded. */
    static @Nullable Estimate lowestOfUnderbody(DimensionSet set) {
        List<Point> underbody = set.points(Polyline.UNDERBODY);
        if (underbody.isEmpty()) {
            return null;
        }
        double lowest = underbody.stream().mapToDouble(Point::z).min().orElseThrow();
        return lowest <= 0 ? Estimate.constant(0) : Estimate.of(Variable.z(Polyline.UNDERBODY), lowest);
    }

    private @Nullable Estimate meanRocker() {
        Estimate front = z(Landmark.ROCKER_FRONT);
        Estimate rear = z(Landmark.ROCKER_REAR);
        return front == null || rear == null ? null : front.plus(rear).times(0.5);
    }

    private void coordinates() {
        put(SCREEN_TOP_X, x(Landmark.SCREEN_TOP));
        put(SCREEN_TOP_Z, z(Landmark.SCREEN_TOP));
        put(ROOF_APEX_X, x(Landmark.ROOF_APEX));
        put(BACKLIGHT_TOP_X, x(Landmark.BACKLIGHT_TOP));
        put(BACKLIGHT_TOP_Z, z(Landmark.BACKLIGHT_TOP));
        put(BACKLIGHT_BASE_X, x(Landmark.BACKLIGHT_BASE));
        put(BACKLIGHT_BASE_Z, z(Landmark.BACKLIGHT_BASE));
        put(TAIL_EDGE_Z, z(Landmark.TAIL_EDGE));
        put(TAIL_EDGE_X, x(Landmark.TAIL_EDGE));
        put(BELT_FRONT_X, x(Landmark.BELT_FRONT));
        put(BELT_FRONT_Z, z(Landmark.BELT_FRONT));
        put(BELT_REAR_X, x(Landmark.BELT_REAR));
        put(BELT_REAR_Z, z(Landmark.BELT_REAR));
        put(ARCH_FRONT_TOP_Z, z(Landmark.ARCH_FRONT_TOP));
        put(ARCH_REAR_TOP_Z, z(Landmark.ARCH_REAR_TOP));
        put(ARCH_FRONT_TOP_X, x(Landmark.ARCH_FRONT_TOP));
        put(ARCH_REAR_TOP_X, x(Landmark.ARCH_REAR_TOP));
        put(ARCH_FRONT_FORE_X, x(Landmark.ARCH_FRONT_FORE));
        put(ARCH_FRONT_AFT_X, x(Landmark.ARCH_FRONT_AFT));
        put(ARCH_REAR_FORE_X, x(Landmark.ARCH_REAR_FORE));
        put(ARCH_REAR_AFT_X, x(Landmark.ARCH_REAR_AFT));
        put(BONNET_EDGE_Z, z(Landmark.BONNET_EDGE));
        put(H_POINT_X, x(Landmark.H_POINT));
        put(FRONT_DOOR_CUT_X, x(Landmark.FRONT_DOOR_CUT));
        put(REAR_DOOR_CUT_X, x(Landmark.REAR_DOOR_CUT));
    }

    private void midWheelbase() {
        Estimate middle = get(WHEELBASE).times(0.5);
        RoofLine roof = new RoofLine(set);
        put(ROOF_AT_MID_WHEELBASE, roof.heightAt(middle));
        put(BELT_AT_MID_WHEELBASE, lineAt(Landmark.BELT_FRONT, Landmark.BELT_REAR, middle));
        put(
                ROCKER_AT_MID_WHEELBASE,
                firstOf(
                        lineAt(Landmark.ROCKER_FRONT, Landmark.ROCKER_REAR, middle),
                        recorded(Dimension.ROCKER_HEIGHT)));
    }

    private @Nullable Estimate lineAt(Landmark front, Landmark rear, Estimate x) {
        Place from = Place.of(set, front);
        Place to = Place.of(set, rear);
        return from == null || to == null || from.x().value() >= to.x().value() ? null : from.heightAt(x, to);
    }

    private void angles() {
        put(SCREEN_ANGLE, firstOf(slope(Landmark.COWL, Landmark.SCREEN_TOP, 1), recorded(Dimension.SCREEN_ANGLE)));
        put(
                BACKLIGHT_ANGLE,
                firstOf(
                        slope(Landmark.BACKLIGHT_BASE, Landmark.BACKLIGHT_TOP, -1),
                        recorded(Dimension.BACKLIGHT_ANGLE)));
    }

    /** Degrees above the horizontal of the line from one landmark up to another; sense 1 runs rearward, -1 forward. */
    private @Nullable Estimate slope(Landmark base, Landmark top, int sense) {
        Place from = Place.of(set, base);
        Place to = Place.of(set, top);
        return from == null || to == null || from.sameAs(to)
                ? null
                : to.z().minus(from.z()).directionDeg(to.x().minus(from.x()).times(sense));
    }
}
