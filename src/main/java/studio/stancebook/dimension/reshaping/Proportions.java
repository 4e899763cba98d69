package studio.stancebook.dimension.reshaping;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.Point;

/**
 * A side view without its size: lengths in front tyre diameters, angles in degrees, landmarks as on one vehicle to which the
 * body is stretched between its wheels and over its overhangs.
 *
 * @param lengths and angles by dimension
 * @param landmarks on that vehicle
 */
record Proportions(Map<Dimension, Double> lengths, Map<Landmark, Point> landmarks) {

    /** That vehicle, its tyre 1. */
    private static final LengthsAlong COMMON = new LengthsAlong(1, 4, 1);

    /** What belongs to one vehicle and not to its proportions, and what other values give. */
    private static final Set<Dimension> LEFT_OUT = EnumSet.of(
            Dimension.OVERALL_LENGTH,
            Dimension.FRONT_TYRE_DIAMETER,
            Dimension.REAR_TYRE_DIAMETER,
            Dimension.FRONT_RIM_DIAMETER,
            Dimension.REAR_RIM_DIAMETER,
            Dimension.FRONT_LOADED_RADIUS,
            Dimension.REAR_LOADED_RADIUS,
            Dimension.KERB_MASS,
            Dimension.DRIVEN_AXLES);

    private static final Map<Reading, Dimension> READ = Map.of(
            Reading.FRONT_OVERHANG, Dimension.FRONT_OVERHANG,
            Reading.REAR_OVERHANG, Dimension.REAR_OVERHANG,
            Reading.OVERALL_HEIGHT, Dimension.OVERALL_HEIGHT,
            Reading.GROUND_CLEARANCE, Dimension.GROUND_CLEARANCE);

    Proportions {
        lengths = Map.copyOf(lengths);
        landmarks = Map.copyOf(landmarks);
    }

    /** Empty without a front tyre. */
    static Optional<Proportions> of(DimensionSet set) {
        OptionalDouble tyre = set.tyreDiameter(Axle.FRONT);
        if (tyre.isEmpty()) {
            return Optional.empty();
        }
        double d = tyre.getAsDouble();
        Map<Dimension, Double> lengths = new EnumMap<>(Dimension.class);
        set.scalars().forEach((dimension, value) -> {
            if (!LEFT_OUT.contains(dimension)) {
                lengths.put(dimension, dimension.unit() == Unit.MM ? value / d : value);
            }
        });
        Readings readings = new Readings(set);
        READ.forEach((reading, dimension) ->
                readings.find(reading).ifPresent(estimate -> lengths.put(dimension, estimate.value() / d)));
        Stretch along = LengthsAlong.of(readings).stretchTo(COMMON, d, 1);
        Map<Landmark, Point> landmarks = new EnumMap<>(Landmark.class);
        set.landmarks().forEach((landmark, at) -> landmarks.put(landmark, new Point(along.of(at.x()), at.z() / d)));
        return Optional.of(new Proportions(lengths, landmarks));
    }

    /** The landmarks of a vehicle of these proportions, mm. */
    Map<Landmark, Point> placed(LengthsAlong vehicle, double d) {
        Stretch along = COMMON.stretchTo(vehicle, 1, d);
        Map<Landmark, Point> placed = new EnumMap<>(Landmark.class);
        landmarks.forEach((landmark, at) -> placed.put(landmark, new Point(along.of(at.x()), at.z() * d)));
        return placed;
    }

    /** A length of a vehicle of these proportions, mm; NaN where it is not known. */
    double length(Dimension dimension, double d) {
        return lengths.getOrDefault(dimension, Double.NaN) * d;
    }
}
