package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.*;
import static studio.stancebook.measure.Formulas.*;
import static studio.stancebook.measure.MeasureGroup.*;
import static studio.stancebook.measure.MeasureUnit.*;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.Measure.MeasureText;

/** The measures that every studio has; D is the mean of the front and rear overall tyre diameters. */
final class Measures {

    private static final List<Measure> BUILT_IN = new ArrayList<>();

    static {
        wheels();
        stance();
        doors();
        tyres();
        shares();
        lines();
        underbody();
        areas();
    }

    private Measures() {}

    /** In the order in which they are shown. */
    static List<Measure> builtIn() {
        return List.copyOf(BUILT_IN);
    }

    private static void wheels() {
        inWheels(
                "wheelbase-in-wheels",
                "Wheelbase, centre to centre",
                "Wheelbase (L101) in tyre diameters, from wheel centre to wheel centre.",
                "longer between the wheels",
                WHEELBASE);
        add(
                new MeasureText(
                        "wheels-spanned",
                        "Wheels spanned, both counted",
                        WHEELS,
                        RATIO,
                        2,
                        "Tyre diameters from the front of the front tyre to the back of the rear one: L101 / D + 1.",
                        "longer between the wheels"),
                s -> Formula.Result.of(
                        s.get(WHEELBASE).plus(s.get(WHEEL_DIAMETER)).over(s.get(WHEEL_DIAMETER))),
                WHEELBASE,
                WHEEL_DIAMETER);
        inWheels(
                "length-in-wheels",
                "Overall length in wheels",
                "Overall length (L103) in tyre diameters.",
                "longer body",
                OVERALL_LENGTH);
        inWheels(
                "height-in-wheels",
                "Overall height in wheels",
                "Overall height (H100) in tyre diameters.",
                "taller body",
                OVERALL_HEIGHT);
        inWheels(
                "width-in-wheels",
                "Overall width in wheels",
                "Overall width (W103) in tyre diameters.",
                "wider body",
                OVERALL_WIDTH);
        inWheels(
                "front-overhang-in-wheels",
                "Front overhang in wheels",
                "Front overhang (L104) in tyre diameters.",
                "longer nose ahead of the wheel",
                FRONT_OVERHANG);
        inWheels(
                "rear-overhang-in-wheels",
                "Rear overhang in wheels",
                "Rear overhang (L105) in tyre diameters.",
                "longer tail behind the wheel",
                REAR_OVERHANG);
        inWheels(
                "clearance-in-wheels",
                "Ground clearance in wheels",
                "Ground clearance (H156) in tyre diameters.",
                "more room under the body",
                GROUND_CLEARANCE);
    }

    private static void stance() {
        add(
                new MeasureText(
                        "rocker-offset-in-wheels",
                        "Rocker against the wheel centre",
                        WHEELS,
                        RATIO,
                        2,
                        "Mean rocker height less mean wheel centre height, in tyre diameters; 0 at the wheel centre.",
                        "rocker higher over the ground"),
                Formulas::rockerOffset,
                ROCKER_HEIGHT,
                FRONT_CENTRE_HEIGHT,
                REAR_CENTRE_HEIGHT,
                WHEEL_DIAMETER);
        add(
                new MeasureText(
                        "arch-gap-front-in-wheels",
                        "Front arch over the tyre",
                        WHEELS,
                        RATIO,
                        3,
                        "Height of the front wheel arch above the top of the tyre, in tyre diameters.",
                        "more wheel travel"),
                s -> archGap(s, ARCH_FRONT_TOP_Z, FRONT_CENTRE_HEIGHT, FRONT_TYRE_DIAMETER),
                ARCH_FRONT_TOP_Z,
                FRONT_CENTRE_HEIGHT,
                FRONT_TYRE_DIAMETER,
                WHEEL_DIAMETER);
        add(
                new MeasureText(
                        "arch-gap-rear-in-wheels",
                        "Rear arch over the tyre",
                        WHEELS,
                        RATIO,
                        3,
                        "Height of the rear wheel arch above the top of the tyre, in tyre diameters.",
                        "more wheel travel"),
                s -> archGap(s, ARCH_REAR_TOP_Z, REAR_CENTRE_HEIGHT, REAR_TYRE_DIAMETER),
                ARCH_REAR_TOP_Z,
                REAR_CENTRE_HEIGHT,
                REAR_TYRE_DIAMETER,
                WHEEL_DIAMETER);
        add(
                new MeasureText(
                        "screen-aim-in-wheels",
                        "Windscreen aim",
                        WHEELS,
                        RATIO,
                        2,
                        "Where the windscreen line, carried down, crosses the vertical through the front wheel centre: height"
                                + " above that centre in tyre diameters; 0 at the centre, 0.5 at the top of the tyre.",
                        "windscreen further forward or faster"),
                Formulas::screenAim,
                COWL_X,
                COWL_Z,
                SCREEN_TOP_X,
                SCREEN_TOP_Z,
                FRONT_CENTRE_HEIGHT,
                WHEEL_DIAMETER);
        inWheels(
                "dash-to-axle-in-wheels",
                "Dash to axle in wheels",
                "Distance from the front wheel centre back to the cowl, in tyre diameters.",
                "cabin further to the rear",
                COWL_X);
    }

    private static void doors() {
        add(
                new MeasureText(
                        "front-door-gap-in-wheels",
                        "Front tyre to door shut line",
                        WHEELS,
                        RATIO,
                        2,
                        "From the back of the front tyre to the front door shut line at the rocker, in tyre diameters.",
                        "door further behind the wheel"),
                s -> Formula.Result.of(s.get(FRONT_DOOR_CUT_X)
                        .minus(s.get(FRONT_TYRE_DIAMETER).times(0.5))
                        .over(s.get(WHEEL_DIAMETER))),
                FRONT_DOOR_CUT_X,
                FRONT_TYRE_DIAMETER,
                WHEEL_DIAMETER);
        add(
                new MeasureText(
                        "rear-door-lead-in-wheels",
                        "Rear door shut line ahead of the wheel",
                        WHEELS,
                        RATIO,
                        2,
                        "From the rear door shut line at the rocker back to the rear wheel centre, in tyre diameters;"
                                + " positive ahead of the centre.",
                        "door further ahead of the wheel"),
                s -> Formula.Result.of(
                        s.get(WHEELBASE).minus(s.get(REAR_DOOR_CUT_X)).over(s.get(WHEEL_DIAMETER))),
                WHEELBASE,
                REAR_DOOR_CUT_X,
                WHEEL_DIAMETER);
    }

    private static void tyres() {
        ratio(
                new MeasureText(
                        "tyre-stagger",
                        "Rear tyre to front tyre",
                        TYRES,
                        RATIO,
                        3,
                        "Rear overall tyre diameter over the front one.",
                        "larger rear tyres"),
                REAR_TYRE_DIAMETER,
                FRONT_TYRE_DIAMETER);
        add(
                new MeasureText(
                        "sidewall-share",
                        "Sidewall share",
                        TYRES,
                        RATIO,
                        3,
                        "Section height of the front tyre over its overall diameter.",
                        "more rubber over the rim"),
                s -> Formula.Result.of(s.get(FRONT_TYRE_DIAMETER)
                        .minus(s.get(FRONT_RIM_DIAMETER))
                        .times(0.5)
                        .over(s.get(FRONT_TYRE_DIAMETER))),
                FRONT_TYRE_DIAMETER,
                FRONT_RIM_DIAMETER);
        ratio(
                new MeasureText(
                        "rim-share",
                        "Rim share",
                        TYRES,
                        RATIO,
                        3,
                        "Rim diameter over overall diameter of the front tyre.",
                        "larger rim in the wheel"),
                FRONT_RIM_DIAMETER,
                FRONT_TYRE_DIAMETER);
    }

    private static void shares() {
        share(
                "wheelbase-share",
                "Wheelbase of length",
                "Wheelbase over overall length.",
                "wheels further out",
                WHEELBASE,
                OVERALL_LENGTH);
        share(
                "front-overhang-share",
                "Front overhang of length",
                "Front overhang over overall length.",
                "longer nose",
                FRONT_OVERHANG,
                OVERALL_LENGTH);
        share(
                "rear-overhang-share",
                "Rear overhang of length",
                "Rear overhang over overall length.",
                "longer tail",
                REAR_OVERHANG,
                OVERALL_LENGTH);
        share(
                "overhang-balance",
                "Rear to front overhang",
                "Rear overhang over front overhang.",
                "weight of the body to the rear",
                REAR_OVERHANG,
                FRONT_OVERHANG);
        share(
                "height-to-length",
                "Height to length",
                "Overall height over overall length.",
                "taller for its length",
                OVERALL_HEIGHT,
                OVERALL_LENGTH);
        share(
                "height-to-width",
                "Height to width",
                "Overall height over overall width.",
                "taller for its width",
                OVERALL_HEIGHT,
                OVERALL_WIDTH);
        share(
                "track-to-width",
                "Track to width",
                "Front track over overall width.",
                "wheels further out to the sides",
                FRONT_TRACK,
                OVERALL_WIDTH);
        add(
                shareText(
                        "glass-to-body",
                        "Glass to body",
                        "At mid-wheelbase: roof to belt over belt to rocker.",
                        "taller side glass"),
                Formulas::glassToBody,
                ROOF_AT_MID_WHEELBASE,
                BELT_AT_MID_WHEELBASE,
                ROCKER_AT_MID_WHEELBASE);
        add(
                shareText(
                        "bonnet-share",
                        "Bonnet of length",
                        "From the nose to the cowl over overall length.",
                        "longer bonnet"),
                s -> Formula.Result.of(s.get(COWL_X).plus(s.get(FRONT_OVERHANG)).over(s.get(OVERALL_LENGTH))),
                COWL_X,
                FRONT_OVERHANG,
                OVERALL_LENGTH);
        add(
                shareText(
                        "cabin-share",
                        "Cabin of length",
                        "From the cowl to the base of the backlight over overall length.",
                        "longer cabin"),
                s -> Formula.Result.of(
                        s.get(BACKLIGHT_BASE_X).minus(s.get(COWL_X)).over(s.get(OVERALL_LENGTH))),
                BACKLIGHT_BASE_X,
                COWL_X,
                OVERALL_LENGTH);
        share(
                "roof-apex-position",
                "Roof apex along the wheelbase",
                "Position of the highest point of the roof behind the front wheel centre, over the wheelbase.",
                "roof peaks further to the rear",
                ROOF_APEX_X,
                WHEELBASE);
        share(
                "seat-height-share",
                "Seat height of height",
                "Seating reference height (H5) over overall height.",
                "people sit higher in the body",
                SEAT_HEIGHT,
                OVERALL_HEIGHT);
    }

    private static void lines() {
        add(
                new MeasureText(
                        "screen-angle",
                        "Windscreen angle from the horizontal",
                        LINES,
                        DEG,
                        1,
                        "The windscreen line, cowl to top on the centre plane, from the horizontal; low is fast.",
                        "more upright windscreen"),
                s -> slope(s, SCREEN_ANGLE),
                SCREEN_ANGLE);
        add(
                new MeasureText(
                        "backlight-angle",
                        "Backlight angle from the horizontal",
                        LINES,
                        DEG,
                        1,
                        "The backlight line from the horizontal.",
                        "more upright rear"),
                s -> slope(s, BACKLIGHT_ANGLE),
                BACKLIGHT_ANGLE);
        add(
                new MeasureText(
                        "belt-rise",
                        "Belt rise",
                        LINES,
                        DEG,
                        1,
                        "The belt line from the horizontal, positive when it rises to the rear.",
                        "more wedge"),
                s -> Formula.Result.of(s.get(BELT_REAR_Z)
                        .minus(s.get(BELT_FRONT_Z))
                        .directionDeg(s.get(BELT_REAR_X).minus(s.get(BELT_FRONT_X)))),
                BELT_FRONT_X,
                BELT_FRONT_Z,
                BELT_REAR_X,
                BELT_REAR_Z);
    }

    private static void underbody() {
        angle(
                "approach-angle",
                "Approach angle",
                "Steepest slope from the ground that the nose clears, touching the front tyre (ISO 612).",
                "more capability ahead",
                UnderbodyAngle.APPROACH);
        angle(
                "departure-angle",
                "Departure angle",
                "Steepest slope to the ground that the tail clears, touching the rear tyre (ISO 612).",
                "more capability behind",
                UnderbodyAngle.DEPARTURE);
        angle(
                "ramp-angle",
                "Ramp angle",
                "Sum of the slopes of the two planes that touch the tyres and meet under the body (ISO 612).",
                "more capability between the axles",
                UnderbodyAngle.RAMP);
    }

    private static void areas() {
        add(
                new MeasureText(
                        "profile-fill",
                        "Profile fill",
                        AREAS,
                        RATIO,
                        3,
                        "Area under the upper silhouette, dropped from nose and tail to the ground line under the wheelbase and closed"
                                + " along it, over length times height; near 1 is a box.",
                        "boxier"),
                List.of(Need.of(Polyline.OUTLINE), Need.of(OVERALL_LENGTH), Need.of(OVERALL_HEIGHT)),
                SideAreas::profileFill);
        add(
                new MeasureText(
                        "glass-area-share",
                        "Glass area share",
                        AREAS,
                        RATIO,
                        3,
                        "Area of the side glass over the side area above the rocker.",
                        "more glass"),
                List.of(
                        Need.of(Polyline.DAYLIGHT_OPENING),
                        Need.of(Polyline.OUTLINE),
                        Need.of(ROCKER_AT_MID_WHEELBASE)),
                SideAreas::glassAreaShare);
        add(
                new MeasureText(
                        "footprint",
                        "Footprint",
                        AREAS,
                        SQUARE_METRES,
                        2,
                        "Wheelbase times mean track.",
                        "larger stance on the ground"),
                s -> Formula.Result.of(s.get(FRONT_TRACK)
                        .plus(s.get(REAR_TRACK))
                        .times(0.5)
                        .times(s.get(WHEELBASE))
                        .times(1e-6)),
                WHEELBASE,
                FRONT_TRACK,
                REAR_TRACK);
    }

    private static void inWheels(String key, String name, String definition, String more, Reading length) {
        ratio(new MeasureText(key, name, WHEELS, RATIO, 2, definition, more), length, WHEEL_DIAMETER);
    }

    private static void share(String key, String name, String definition, String more, Reading part, Reading whole) {
        ratio(shareText(key, name, definition, more), part, whole);
    }

    private static MeasureText shareText(String key, String name, String definition, String more) {
        return new MeasureText(key, name, SHARES, RATIO, 3, definition, more);
    }

    private static void angle(String key, String name, String definition, String more, UnderbodyAngle angle) {
        add(
                new MeasureText(key, name, UNDERBODY, DEG, 1, definition, more),
                List.of(Need.of(angle)),
                subject -> Underside.angle(subject, angle));
    }

    private static void ratio(MeasureText text, Reading above, Reading below) {
        add(text, s -> Formula.Result.of(s.get(above).over(s.get(below))), above, below);
    }

    private static void add(MeasureText text, Formula formula, Reading... needs) {
        add(text, Arrays.stream(needs).map(Need::of).toList(), formula);
    }

    private static void add(MeasureText text, List<Need> needs, Formula formula) {
        BUILT_IN.add(new Measure(text, needs, formula));
    }
}
