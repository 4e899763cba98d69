package studio.stancebook.geometry;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a side view and its record say about clearances, for {@link OffRoadCriteria}; empty where it is not measurable. An
 * angle that is measured but that nothing limits is {@link Double#POSITIVE_INFINITY}.
 *
 * @param approachDeg approach angle, degrees
 * @param departureDeg departure angle, degrees
 * @param rampDeg ramp angle, degrees
 * @param runningClearanceMm lowest point of the vehicle without its unsprung parts, mm above the ground
 * @param frontAxleClearanceMm clearance under the front axle, mm
 * @param rearAxleClearanceMm clearance under the rear axle, mm
 * @param clearanceBetweenAxlesMm lowest rigid point between the axles, mm above the ground
 * @param reasons what must be said beside a value, or why there is none
 * @param atMost the quantities that may be smaller than their value, which therefore can be missed but not met
 */
public record OffRoadDimensions(
        OptionalDouble approachDeg,
        OptionalDouble departureDeg,
        OptionalDouble rampDeg,
        OptionalDouble runningClearanceMm,
        OptionalDouble frontAxleClearanceMm,
        OptionalDouble rearAxleClearanceMm,
        OptionalDouble clearanceBetweenAxlesMm,
        Map<OffRoadQuantity, String> reasons,
        Set<OffRoadQuantity> atMost) {

    /** Values of which there is nothing more to say. */
    public OffRoadDimensions(
            OptionalDouble approachDeg,
            OptionalDouble departureDeg,
            OptionalDouble rampDeg,
            OptionalDouble runningClearanceMm,
            OptionalDouble frontAxleClearanceMm,
            OptionalDouble rearAxleClearanceMm,
            OptionalDouble clearanceBetweenAxlesMm) {
        this(
                approachDeg,
                departureDeg,
                rampDeg,
                runningClearanceMm,
                frontAxleClearanceMm,
                rearAxleClearanceMm,
                clearanceBetweenAxlesMm,
                Map.of(),
                Set.of());
    }

    /** @throws IllegalArgumentException if a value is negative or NaN */
    public OffRoadDimensions {
        reasons = Map.copyOf(reasons);
        atMost = Set.copyOf(atMost);
        Stream.of(
                        approachDeg,
                        departureDeg,
                        rampDeg,
                        runningClearanceMm,
                        frontAxleClearanceMm,
                        rearAxleClearanceMm,
                        clearanceBetweenAxlesMm)
                .forEach(value -> value.ifPresent(OffRoadDimensions::requireNotNegative));
    }

    /** The value of one quantity, in its unit. */
    public OptionalDouble of(OffRoadQuantity quantity) {
        return switch (quantity) {
            case APPROACH -> approachDeg;
            case DEPARTURE -> departureDeg;
            case RAMP -> rampDeg;
            case RUNNING_CLEARANCE -> runningClearanceMm;
            case FRONT_AXLE_CLEARANCE -> frontAxleClearanceMm;
            case REAR_AXLE_CLEARANCE -> rearAxleClearanceMm;
            case CLEARANCE_BETWEEN_AXLES -> clearanceBetweenAxlesMm;
        };
    }

    private static void requireNotNegative(double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException("An angle or clearance is 0 or more; got " + value);
        }
    }
}
