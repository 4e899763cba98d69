package studio.stancebook.dimension;

import static studio.stancebook.dimension.Landmark.*;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import studio.stancebook.dimension.Disagreement.Amounts;
import studio.stancebook.geometry.Point;

/**
 * Landmarks that come in an order: the front one before the rear one, the base below the top. A windscreen or backlight may
 * lean either way, so its base has no order along the vehicle.
 */
final class LandmarkOrder {

    private record Pair(Landmark first, Landmark second) {}

    private static final List<Pair> FRONT_TO_REAR = List.of(
            new Pair(COWL, BACKLIGHT_BASE),
            new Pair(SCREEN_TOP, BACKLIGHT_TOP),
            new Pair(BELT_FRONT, BELT_REAR),
            new Pair(ROCKER_FRONT, ROCKER_REAR),
            new Pair(ARCH_FRONT_TOP, ARCH_REAR_TOP),
            new Pair(FRONT_DOOR_CUT, REAR_DOOR_CUT),
            new Pair(BONNET_EDGE, COWL),
            new Pair(ARCH_FRONT_FORE, ARCH_FRONT_TOP),
            new Pair(ARCH_FRONT_TOP, ARCH_FRONT_AFT),
            new Pair(ARCH_FRONT_FORE, ARCH_FRONT_AFT),
            new Pair(ARCH_FRONT_AFT, ARCH_REAR_FORE),
            new Pair(ARCH_REAR_FORE, ARCH_REAR_TOP),
            new Pair(ARCH_REAR_TOP, ARCH_REAR_AFT),
            new Pair(ARCH_REAR_FORE, ARCH_REAR_AFT));
    private static final List<Pair> BASE_TO_TOP = List.of(
            new Pair(COWL, SCREEN_TOP),
            new Pair(BACKLIGHT_BASE, BACKLIGHT_TOP),
            new Pair(ARCH_FRONT_FORE, ARCH_FRONT_TOP),
            new Pair(ARCH_FRONT_AFT, ARCH_FRONT_TOP),
            new Pair(ARCH_REAR_FORE, ARCH_REAR_TOP),
            new Pair(ARCH_REAR_AFT, ARCH_REAR_TOP));

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

    private Optional<Disagreement> check(Pair pair, String axis, ToDoubleFunction<Point> coordinate, String rule) {
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
                Amounts.of(Unit.MM, set.scale())));
    }
}
