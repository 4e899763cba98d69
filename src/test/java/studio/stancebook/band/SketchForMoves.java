package studio.stancebook.band;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;

/** An invented side view with which every measure can be computed, at any size. */
final class SketchForMoves {

    private SketchForMoves() {}

    static DimensionSet set() {
        return scaled(1);
    }

    static DimensionSet scaled(double k) {
        DimensionSetBuilder set = DimensionSet.builder();
        set.set(Dimension.WHEELBASE, 2750 * k)
                .set(Dimension.FRONT_OVERHANG, 880 * k)
                .set(Dimension.REAR_OVERHANG, 960 * k)
                .set(Dimension.OVERALL_WIDTH, 1890 * k)
                .set(Dimension.OVERALL_HEIGHT, 1740 * k)
                .set(Dimension.FRONT_TRACK, 1610 * k)
                .set(Dimension.REAR_TRACK, 1625 * k)
                .set(Dimension.GROUND_CLEARANCE, 215 * k)
                .set(Dimension.SEAT_HEIGHT, 690 * k)
                .set(Dimension.FRONT_TYRE_DIAMETER, 740 * k)
                .set(Dimension.REAR_TYRE_DIAMETER, 740 * k)
                .set(Dimension.FRONT_RIM_DIAMETER, 432 * k)
                .set(Dimension.REAR_RIM_DIAMETER, 432 * k);
        landmarks(set, k);
        lines(set, k);
        return set.build();
    }

    private static void landmarks(DimensionSetBuilder set, double k) {
        set.set(Landmark.COWL, 480 * k, 1090 * k)
                .set(Landmark.SCREEN_TOP, 1150 * k, 1660 * k)
                .set(Landmark.ROOF_APEX, 1500 * k, 1740 * k)
                .set(Landmark.BACKLIGHT_TOP, 3200 * k, 1640 * k)
                .set(Landmark.BACKLIGHT_BASE, 3560 * k, 1160 * k)
                .set(Landmark.BELT_FRONT, 700 * k, 1070 * k)
                .set(Landmark.BELT_REAR, 3050 * k, 1150 * k)
                .set(Landmark.ROCKER_FRONT, 480 * k, 330 * k)
                .set(Landmark.ROCKER_REAR, 2250 * k, 345 * k)
                .set(Landmark.ARCH_FRONT_TOP, 0, 800 * k)
                .set(Landmark.ARCH_REAR_TOP, 2750 * k, 810 * k)
                .set(Landmark.FRONT_DOOR_CUT, 470 * k, 330 * k)
                .set(Landmark.REAR_DOOR_CUT, 2380 * k, 345 * k);
    }

    private static void lines(DimensionSetBuilder set, double k) {
        set.set(Polyline.UNDERBODY, points(k, -880, 500, -560, 300, 0, 250, 1400, 215, 2750, 255, 3300, 360, 3710, 540))
                .set(
                        Polyline.OUTLINE,
                        points(
                                k, -880, 500, -860, 820, 480, 1090, 1150, 1660, 1500, 1740, 3200, 1640, 3560, 1160,
                                3710, 920, 3710, 540))
                .set(Polyline.DAYLIGHT_OPENING, points(k, 820, 1085, 1180, 1580, 3080, 1540, 3020, 1150));
    }

    static List<Point> points(double k, double... xz) {
        return IntStream.range(0, xz.length / 2)
                .mapToObj(i -> Arrays.copyOfRange(xz, 2 * i, 2 * i + 2))
                .map(pair -> new Point(pair[0] * k, pair[1] * k))
                .toList();
    }
}
