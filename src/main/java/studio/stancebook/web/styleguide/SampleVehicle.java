package studio.stancebook.web.styleguide;

import java.util.List;
import java.util.stream.IntStream;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.FieldError;

/** One invented off-road vehicle, as much of it as is known at each stage of a proposal. Lengths in mm. */
final class SampleVehicle {

    private static final double[] UNDERBODY = {
        -725, 444, -599, 373, -244, 281, 244, 257, 853, 232, 2048, 240, 2616, 265, 3105, 289, 3370, 273, 3578, 373
    };

    private static final double[] OUTLINE = {
        -725, 444, -819, 556, -831, 733, -821, 917, -772, 1015, -676, 1060, -264, 1166, 139, 1214, 704, 1247, 799, 1359,
        931, 1518, 1067, 1679, 1154, 1788, 1217, 1858, 1345, 1909, 1593, 1923, 2489, 1919, 3103, 1902, 3371, 1879, 3439,
        1862, 3463, 1779, 3520, 1581, 3606, 1280, 3635, 1174, 3672, 966, 3692, 757, 3685, 567, 3634, 408, 3578, 373
    };

    private SampleVehicle() {}

    /** Wheelbase, tyres and height: a construction in straight lines. */
    static DimensionSet bare() {
        return figures(DimensionSet.builder()).build();
    }

    /** With the landmarks of its side view: a silhouette. */
    static DimensionSet withLandmarks() {
        return landmarks(figures(DimensionSet.builder())).build();
    }

    /** With its lines taken off a tape drawing. */
    static DimensionSet withLines() {
        return landmarks(figures(DimensionSet.builder()))
                .set(Polyline.UNDERBODY, points(UNDERBODY))
                .set(Polyline.OUTLINE, points(OUTLINE))
                .build();
    }

    /** The same vehicle on a longer wheelbase, to lie behind the others. */
    static DimensionSet longer() {
        return landmarks(figures(DimensionSet.builder()))
                .set(Dimension.WHEELBASE, 2980)
                .set(Dimension.OVERALL_LENGTH, 4659)
                .set(Landmark.BACKLIGHT_TOP, 3575, 1862)
                .set(Landmark.BACKLIGHT_BASE, 3742, 1280)
                .set(Landmark.TAIL_EDGE, 3771, 1174)
                .set(Landmark.ARCH_REAR_TOP, 2980, 941)
                .build();
    }

    /** A sketch without dimension, in hundredths of its tyre. */
    static DimensionSet sketch() {
        return DimensionSet.builder()
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 349)
                .set(Dimension.FRONT_TYRE_DIAMETER, 100)
                .set(Dimension.REAR_TYRE_DIAMETER, 100)
                .set(Dimension.FRONT_OVERHANG, 102)
                .set(Dimension.REAR_OVERHANG, 104)
                .set(Dimension.OVERALL_HEIGHT, 236)
                .set(Dimension.ROCKER_HEIGHT, 49)
                .set(Landmark.COWL, 86, 153)
                .set(Landmark.SCREEN_TOP, 149, 228)
                .set(Landmark.BACKLIGHT_TOP, 422, 228)
                .set(Landmark.BACKLIGHT_BASE, 442, 157)
                .build();
    }

    /** The inputs of a dimension set, two of which are refused. */
    static DimensionForm refusedForm() {
        return DimensionForm.of(withLines())
                .with(List.of(
                        new FieldError(
                                DimensionForm.PREFIX + "overallHeight",
                                "19230 is outside the plausible range 800 to 4000 mm."),
                        new FieldError(DimensionForm.PREFIX + "cowl", "A landmark needs both x and z.")));
    }

    private static DimensionSetBuilder figures(DimensionSetBuilder set) {
        return set.set(Dimension.WHEELBASE, 2844)
                .set(Dimension.OVERALL_LENGTH, 4523)
                .set(Dimension.FRONT_OVERHANG, 831)
                .set(Dimension.OVERALL_HEIGHT, 1923)
                .set(Dimension.FRONT_TYRE_DIAMETER, 814)
                .set(Dimension.REAR_TYRE_DIAMETER, 814)
                .set(Dimension.FRONT_RIM_DIAMETER, 457)
                .set(Dimension.REAR_RIM_DIAMETER, 457);
    }

    private static DimensionSetBuilder landmarks(DimensionSetBuilder set) {
        return set.set(Dimension.GROUND_CLEARANCE, 232)
                .set(Dimension.APPROACH_ANGLE, 37)
                .set(Dimension.DEPARTURE_ANGLE, 31)
                .set(Dimension.RAMP_ANGLE, 19)
                .set(Landmark.COWL, 704, 1247)
                .set(Landmark.SCREEN_TOP, 1217, 1858)
                .set(Landmark.ROOF_APEX, 1593, 1923)
                .set(Landmark.BACKLIGHT_TOP, 3439, 1862)
                .set(Landmark.BACKLIGHT_BASE, 3606, 1280)
                .set(Landmark.TAIL_EDGE, 3635, 1174)
                .set(Landmark.BELT_FRONT, 884, 1245)
                .set(Landmark.BELT_REAR, 3491, 1282)
                .set(Landmark.ROCKER_FRONT, 615, 452)
                .set(Landmark.ROCKER_REAR, 2245, 461)
                .set(Landmark.ARCH_FRONT_TOP, 0, 941)
                .set(Landmark.ARCH_REAR_TOP, 2844, 941)
                .set(Landmark.FRONT_DOOR_CUT, 697, 452)
                .set(Landmark.REAR_DOOR_CUT, 2205, 461);
    }

    private static List<Point> points(double[] xz) {
        return IntStream.range(0, xz.length / 2)
                .mapToObj(i -> new Point(xz[2 * i], xz[2 * i + 1]))
                .toList();
    }
}
