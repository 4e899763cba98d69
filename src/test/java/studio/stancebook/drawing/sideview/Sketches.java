package studio.stancebook.drawing.sideview;

import java.util.List;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/** Invented side views for the tests of drawings. */
public final class Sketches {

    private Sketches() {}

    /** Wheelbase 2760, tyre 265/70R17: 432 + 2 x 186 = 804 mm by the rule of UN R30. */
    public static DimensionSet offRoader() {
        return DimensionSet.builder()
                .tyres(TyreDesignation.parse("265/70R17"))
                .set(Dimension.WHEELBASE, 2760)
                .set(Dimension.FRONT_OVERHANG, 858)
                .set(Dimension.REAR_OVERHANG, 815)
                .set(Dimension.OVERALL_LENGTH, 4433)
                .set(Dimension.OVERALL_HEIGHT, 1846)
                .set(Dimension.GROUND_CLEARANCE, 235)
                .set(Landmark.COWL, 430, 1190)
                .set(Landmark.SCREEN_TOP, 905, 1742)
                .set(Landmark.ROOF_APEX, 1700, 1846)
                .set(Landmark.BACKLIGHT_TOP, 3290, 1780)
                .set(Landmark.BACKLIGHT_BASE, 3500, 1240)
                .set(Landmark.TAIL_EDGE, 3530, 1150)
                .set(Landmark.BELT_FRONT, 560, 1215)
                .set(Landmark.BELT_REAR, 3450, 1255)
                .set(Landmark.ROCKER_FRONT, 520, 418)
                .set(Landmark.ROCKER_REAR, 2250, 430)
                .set(Landmark.ARCH_FRONT_TOP, 0, 975)
                .set(Landmark.ARCH_REAR_TOP, 2760, 985)
                .set(Landmark.H_POINT, 1370, 790)
                .set(Landmark.FRONT_DOOR_CUT, 560, 430)
                .set(Landmark.REAR_DOOR_CUT, 2270, 436)
                .set(
                        Polyline.UNDERBODY,
                        List.of(
                                new Point(-760, 470),
                                new Point(-500, 330),
                                new Point(500, 235),
                                new Point(2300, 240),
                                new Point(3200, 360),
                                new Point(3470, 500)))
                .build();
    }

    /** Only what a specification sheet gives; 205/55R16: 406 + 2 x 113 = 632 mm. */
    public static DimensionSet bare() {
        return DimensionSet.builder()
                .tyres(TyreDesignation.parse("205/55R16"))
                .set(Dimension.WHEELBASE, 2640)
                .set(Dimension.OVERALL_HEIGHT, 1460)
                .build();
    }

    /** A sketch in units of its own: wheelbase 344, tyre 100. */
    public static DimensionSet unscaled() {
        return DimensionSet.builder()
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 344)
                .set(Dimension.FRONT_TYRE_DIAMETER, 100)
                .set(Dimension.REAR_TYRE_DIAMETER, 100)
                .set(Dimension.OVERALL_HEIGHT, 228)
                .set(Dimension.FRONT_OVERHANG, 105)
                .set(Dimension.REAR_OVERHANG, 120)
                .set(Landmark.COWL, 50, 145)
                .set(Landmark.SCREEN_TOP, 120, 218)
                .set(Landmark.BACKLIGHT_TOP, 380, 220)
                .build();
    }
}
