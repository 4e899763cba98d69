package studio.stancebook.dimension.reshaping;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;

/**
 * The lengths that add up to the overall length, in mm or units of the sketch.
 *
 * @param front overhang; NaN where nothing gives it
 * @param rear overhang; NaN where nothing gives it
 */
record LengthsAlong(double front, double wheelbase, double rear) {

    /** How far from a wheel centre the body goes with the wheel, in tyre diameters. Common practice, no source. */
    private static final double WHEEL_ZONE = 0.7;

    static LengthsAlong of(Readings readings) {
        return new LengthsAlong(
                value(readings, Reading.FRONT_OVERHANG),
                value(readings, Reading.WHEELBASE),
                value(readings, Reading.REAR_OVERHANG));
    }

    private static double value(Readings readings, Reading reading) {
        return readings.find(reading).map(estimate -> estimate.value()).orElse(Double.NaN);
    }

    double overall() {
        return front + wheelbase + rear;
    }

    /** With one of them changed and another giving way; empty where the one that gives way is not known or would vanish. */
    Optional<LengthsAlong> with(Dimension dimension, double value, GivesWay givesWay) {
        LengthsAlong changed = switch (dimension) {
            case WHEELBASE -> new LengthsAlong(front, value, rear);
            case FRONT_OVERHANG -> new LengthsAlong(value, wheelbase, rear);
            case REAR_OVERHANG -> new LengthsAlong(front, wheelbase, value);
            default ->
                givesWay == GivesWay.FRONT_OVERHANG
                        ? new LengthsAlong(front + value - overall(), wheelbase, rear)
                        : new LengthsAlong(front, wheelbase, rear + value - overall());
        };
        boolean takenUp =
                dimension != Dimension.OVERALL_LENGTH && !givesWay.dimension().equals(dimension);
        LengthsAlong closed = takenUp ? changed.givingWay(givesWay, changed.overall() - overall()) : changed;
        return closed.possible(dimension) ? Optional.of(closed) : Optional.empty();
    }

    private LengthsAlong givingWay(GivesWay givesWay, double longer) {
        return switch (givesWay) {
            case LENGTH -> this;
            case FRONT_OVERHANG -> new LengthsAlong(front - longer, wheelbase, rear);
            case REAR_OVERHANG -> new LengthsAlong(front, wheelbase, rear - longer);
        };
    }

    private boolean possible(Dimension changed) {
        boolean known = changed != Dimension.OVERALL_LENGTH || !Double.isNaN(overall());
        return known && wheelbase > 0 && !(front <= 0) && !(rear <= 0);
    }

    /** Those of the four dimensions that a set records, with these values. */
    Map<Dimension, Double> recordedIn(DimensionSet set) {
        Map<Dimension, Double> recorded = new EnumMap<>(Dimension.class);
        recorded.put(Dimension.WHEELBASE, wheelbase);
        recorded.put(Dimension.FRONT_OVERHANG, front);
        recorded.put(Dimension.REAR_OVERHANG, rear);
        recorded.put(Dimension.OVERALL_LENGTH, overall());
        recorded.entrySet()
                .removeIf(entry ->
                        set.scalar(entry.getKey()).isEmpty() || entry.getValue().isNaN());
        return recorded;
    }

    /**
     * The map along the vehicle from these lengths to others. About a wheel the body goes with the wheel, as far as the
     * overhangs leave room.
     *
     * @param tyre diameter here, mm
     * @param toTyre diameter there, mm
     */
    Stretch stretchTo(LengthsAlong to, double tyre, double toTyre) {
        double between = Math.min(WHEEL_ZONE, 0.45 * Math.min(wheelbase / tyre, to.wheelbase / toTyre));
        double ahead = zone(front / tyre, to.front / toTyre);
        double behind = zone(rear / tyre, to.rear / toTyre);
        Stretch stretch = Stretch.NONE;
        if (!Double.isNaN(front) && !Double.isNaN(to.front)) {
            stretch = stretch.with(-front, -to.front);
        }
        stretch = stretch.with(-ahead * tyre, -ahead * toTyre)
                .with(between * tyre, between * toTyre)
                .with(wheelbase - between * tyre, to.wheelbase - between * toTyre)
                .with(wheelbase + behind * tyre, to.wheelbase + behind * toTyre);
        return Double.isNaN(rear) || Double.isNaN(to.rear)
                ? stretch
                : stretch.with(wheelbase + rear, to.wheelbase + to.rear);
    }

    private static double zone(double overhang, double toOverhang) {
        return Double.isNaN(overhang) || Double.isNaN(toOverhang)
                ? WHEEL_ZONE
                : Math.min(WHEEL_ZONE, 0.9 * Math.min(overhang, toOverhang));
    }
}
