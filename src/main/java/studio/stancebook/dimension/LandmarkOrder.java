package studio.stancebook.dimension;

import static studio.stancebook.dimension.Landmark.*;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import studio.stancebook.dimension.Disagreement.UnitAmounts;
import studio.stancebook.geometry.Point;

/**
 * Landmarks that come in an order: the front one before the rear one, the base below the top. A windscreen or backlight may
 * lean either way, so its base has no order along the vehicle.
 */
final class LandmarkOrder {

    private record OrderedPair(Landmark first, Landmark second) {}

    private static final List<OrderedPair> FRONT_TO_REAR = List.of(
            new OrderedPair(COWL, BACKLIGHT_BASE),
            new OrderedPair(SCREEN_TOP, BACKLIGHT_TOP),
            new OrderedPair(BELT_FRONT, BELT_REAR),
            new OrderedPair(ROCKER_FRONT, ROCKER_REAR),
            new OrderedPair(ARCH_FRONT_TOP, ARCH_REAR_TOP),
            new OrderedPair(FRONT_DOOR_CUT, REAR_DOOR_CUT),
            new OrderedPair(BONNET_EDGE, COWL),
            new OrderedPair(ARCH_FRONT_FORE, ARCH_FRONT_TOP),
            new OrderedPair(ARCH_FRONT_TOP, ARCH_FRONT_AFT),
            new OrderedPair(ARCH_FRONT_FORE, ARCH_FRONT_AFT),
            new OrderedPair(ARCH_FRONT_AFT, ARCH_REAR_FORE),
            new OrderedPair(ARCH_REAR_FORE, ARCH_REAR_TOP),
            new OrderedPair(ARCH_REAR_TOP, ARCH_REAR_AFT),
            new OrderedPair(ARCH_REAR_FORE, ARCH_REAR_AFT));
    private static final List<OrderedPair> BASE_TO_TOP = List.of(
            new OrderedPair(COWL, SCREEN_TOP),
            new OrderedPair(BACKLIGHT_BASE, BACKLIGHT_TOP),
            new OrderedPair(ARCH_FRONT_FORE, ARCH_FRONT_TOP),
            new OrderedPair(ARCH_FRONT_AFT, ARCH_FRONT_TOP),
            new OrderedPair(ARCH_REAR_FORE, ARCH_REAR_TOP),
            new OrderedPair(ARCH_REAR_AFT, ARCH_REAR_TOP));

    private final DimensionSet set;

    private LandmarkOrder(DimensionSet set) {
        this.set = set;
    }

    static List<Disagreement> of(DimensionSet set) {
        LandmarkOrder order = new LandmarkOrder(set);
        return Stream.concat(
                        FRONT_TO_REAR.stream().map(pair -> order.check(pair, "x", Point::x, "must lie ahead of ")),
                        BASE_TO_TOP.stream().map(pair -> order.check(pair, "z", Point::z, "must lie below ")))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Disagreement> check(
            OrderedPair pair, String axis, ToDoubleFunction<Point> coordinate, String rule) {
        Point first = set.landmarks().get(pair.first());
        Point second = set.landmarks().get(pair.second());
        if (first == null || second == null || coordinate.applyAsDouble(first) < coordinate.applyAsDouble(second)) {
            return Optional.empty();
        }
        return Optional.of(Disagreement.beyond(
                List.of(pair.first().key(), pair.second().key()),
                pair.first().label() + ", " + axis + ",",
                coordinate.applyAsDouble(first),
                rule + pair.second().label().toLowerCase(Locale.ROOT),
                coordinate.applyAsDouble(second),
                0,
                UnitAmounts.of(Unit.MM, set.scale())));
    }
}
