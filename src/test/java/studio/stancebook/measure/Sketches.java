package studio.stancebook.measure;

import java.util.List;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;

/** An invented side view in round numbers, complete enough for every measure, and the same at another size. */
public final class Sketches {

    private Sketches() {}

    public static DimensionSet complete() {
        return scaled(1);
    }

    /** Every length times {@code k}. */
    public static DimensionSet scaled(double k) {
        DimensionSetBuilder set = DimensionSet.builder();
        set.set(Dimension.WHEELBASE, 2800 * k)
                .set(Dimension.OVERALL_LENGTH, 4700 * k)
                .set(Dimension.FRONT_OVERHANG, 900 * k)
                .set(Dimension.REAR_OVERHANG, 1000 * k)
                .set(Dimension.OVERALL_WIDTH, 1880 * k)
                .set(Dimension.OVERALL_HEIGHT, 1750 * k)
                .set(Dimension.FRONT_TRACK, 1600 * k)
                .set(Dimension.REAR_TRACK, 1620 * k)
                .set(Dimension.GROUND_CLEARANCE, 210 * k)
                .set(Dimension.SEAT_HEIGHT, 700 * k)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700 * k)
                .set(Dimension.REAR_TYRE_DIAMETER, 720 * k)
                .set(Dimension.FRONT_RIM_DIAMETER, 420 * k)
                .set(Dimension.REAR_RIM_DIAMETER, 440 * k);
        landmarks(set, k);
        lines(set, k);
        return set.build();
    }

    /** The same with tyres and rims of one size and without an overall length, so that any single length may change. */
    public static DimensionSet withOneTyreSize(double k) {
        return scaled(k).toBuilder()
                .without(Dimension.OVERALL_LENGTH.key())
                .set(Dimension.REAR_TYRE_DIAMETER, 700 * k)
                .set(Dimension.REAR_RIM_DIAMETER, 420 * k)
                .build();
    }

    private static void landmarks(DimensionSetBuilder set, double k) {
        set.set(Landmark.COWL, 500 * k, 1100 * k)
                .set(Landmark.SCREEN_TOP, 1100 * k, 1700 * k)
                .set(Landmark.ROOF_APEX, 1400 * k, 1750 * k)
                .set(Landmark.BACKLIGHT_TOP, 3300 * k, 1650 * k)
                .set(Landmark.BACKLIGHT_BASE, 3600 * k, 1150 * k)
                .set(Landmark.TAIL_EDGE, 3750 * k, 1000 * k)
                .set(Landmark.BELT_FRONT, 700 * k, 1080 * k)
                .set(Landmark.BELT_REAR, 3100 * k, 1160 * k)
                .set(Landmark.ROCKER_FRONT, 500 * k, 320 * k)
                .set(Landmark.ROCKER_REAR, 2300 * k, 340 * k)
                .set(Landmark.ARCH_FRONT_TOP, 10 * k, 770 * k)
                .set(Landmark.ARCH_REAR_TOP, 2790 * k, 790 * k)
                .set(Landmark.H_POINT, 1500 * k, 700 * k)
                .set(Landmark.FRONT_DOOR_CUT, 480 * k, 320 * k)
                .set(Landmark.REAR_DOOR_CUT, 2450 * k, 340 * k)
                .set(Landmark.BONNET_EDGE, -700 * k, 900 * k)
                .set(Landmark.ARCH_FRONT_FORE, -380 * k, 350 * k)
                .set(Landmark.ARCH_FRONT_AFT, 420 * k, 350 * k)
                .set(Landmark.ARCH_REAR_FORE, 2380 * k, 360 * k)
                .set(Landmark.ARCH_REAR_AFT, 3200 * k, 360 * k);
    }

    private static void lines(DimensionSetBuilder set, double k) {
        set.set(Polyline.UNDERBODY, points(k, -900, 480, -600, 300, 0, 240, 1400, 210, 2800, 250, 3400, 350, 3800, 520))
                .set(
                        Polyline.OUTLINE,
                        points(
                                k, -900, 480, -880, 800, 500, 1100, 1100, 1700, 1500, 1750, 3300, 1650, 3600, 1150,
                                3800, 900, 3800, 520))
                .set(Polyline.DAYLIGHT_OPENING, points(k, 800, 1090, 1150, 1600, 3150, 1560, 3100, 1160));
    }

    /** Points at {@code k} times these coordinates: x, z, x, z and so on. */
    public static List<Point> points(double k, double... coordinates) {
        Point[] points = new Point[coordinates.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Point(coordinates[2 * i] * k, coordinates[2 * i + 1] * k);
        }
        return List.of(points);
    }
}
