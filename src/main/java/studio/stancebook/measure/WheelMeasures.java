package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.*;
import static studio.stancebook.measure.Formulas.archCentre;
import static studio.stancebook.measure.Formulas.archGap;
import static studio.stancebook.measure.MeasureGroup.*;
import static studio.stancebook.measure.MeasureUnit.*;

import java.util.Locale;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.Measure.MeasureText;

/** What is counted in wheels; D is the mean of the front and rear overall tyre diameters. */
final class WheelMeasures extends MeasureList {

    WheelMeasures() {
        wheels();
        heightsAndDeck();
        stance();
        archOpenings();
        doors();
    }

    private void wheels() {
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

    private void heightsAndDeck() {
        inWheels(
                "belt-height-in-wheels",
                "Belt height in wheels",
                "Height of the belt line at mid-wheelbase, in tyre diameters.",
                "higher shoulders",
                BELT_AT_MID_WHEELBASE);
        inWheels(
                "cowl-height-in-wheels",
                "Cowl height in wheels",
                "Height of the cowl, the base of the windscreen, in tyre diameters.",
                "higher bonnet and driver",
                COWL_Z);
        inWheels(
                "bonnet-edge-height-in-wheels",
                "Bonnet edge height in wheels",
                "Height of the front upper edge of the bonnet, in tyre diameters.",
                "higher, blunter nose",
                BONNET_EDGE_Z);
        inWheels(
                "tail-height-in-wheels",
                "Tail height in wheels",
                "Height of the tail edge in tyre diameters.",
                "higher tail",
                TAIL_EDGE_Z);
        add(
                new MeasureText(
                        "deck-length-in-wheels",
                        "Deck length in wheels",
                        WHEELS,
                        RATIO,
                        2,
                        "From the base of the backlight back to the tail edge, in tyre diameters.",
                        "longer deck behind the cabin"),
                s -> Formula.Result.of(
                        s.get(TAIL_EDGE_X).minus(s.get(BACKLIGHT_BASE_X)).over(s.get(WHEEL_DIAMETER))),
                TAIL_EDGE_X,
                BACKLIGHT_BASE_X,
                WHEEL_DIAMETER);
    }

    private void stance() {
        add(
                new MeasureText(
                        "rocker-offset-in-wheels",
                        "Rocker height from wheel centre",
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
                        "larger gap between tyre and arch"),
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
                        "larger gap between tyre and arch"),
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
                "arch-offset-front-in-wheels",
                "Front arch top behind the wheel centre",
                "Distance of the top of the front wheel arch behind the wheel centre, in tyre diameters; 0 right above it.",
                "arch further to the rear",
                ARCH_FRONT_TOP_X);
        add(
                new MeasureText(
                        "arch-offset-rear-in-wheels",
                        "Rear arch top behind the wheel centre",
                        WHEELS,
                        RATIO,
                        2,
                        "Distance of the top of the rear wheel arch behind the wheel centre, in tyre diameters; 0 right above it.",
                        "arch further to the rear"),
                s -> Formula.Result.of(
                        s.get(ARCH_REAR_TOP_X).minus(s.get(WHEELBASE)).over(s.get(WHEEL_DIAMETER))),
                ARCH_REAR_TOP_X,
                WHEELBASE,
                WHEEL_DIAMETER);
        add(
                new MeasureText(
                        "backlight-aim-in-wheels",
                        "Backlight aim",
                        WHEELS,
                        RATIO,
                        2,
                        "Where the backlight line, carried down, crosses the vertical through the rear wheel centre: height"
                                + " above that centre in tyre diameters; 0 at the centre, 0.5 at the top of the tyre.",
                        "rear pillar further back, or a slower backlight ahead of the wheel"),
                Formulas::backlightAim,
                BACKLIGHT_BASE_X,
                BACKLIGHT_BASE_Z,
                BACKLIGHT_TOP_X,
                BACKLIGHT_TOP_Z,
                WHEELBASE,
                REAR_CENTRE_HEIGHT,
                WHEEL_DIAMETER);
        inWheels(
                "dash-to-axle-in-wheels",
                "Dash to axle in wheels",
                "Distance from the front wheel centre back to the cowl, in tyre diameters.",
                "cabin further to the rear",
                COWL_X);
    }

    private void archOpenings() {
        ratioOfOpening("arch-opening-front", "Front", FRONT_TYRE_DIAMETER, ARCH_FRONT_FORE_X, ARCH_FRONT_AFT_X);
        ratioOfOpening("arch-opening-rear", "Rear", REAR_TYRE_DIAMETER, ARCH_REAR_FORE_X, ARCH_REAR_AFT_X);
        add(
                centreText("arch-centre-front-in-wheels", "Front"),
                s -> Formula.Result.of(
                        archCentre(s, ARCH_FRONT_FORE_X, ARCH_FRONT_AFT_X).over(s.get(WHEEL_DIAMETER))),
                ARCH_FRONT_FORE_X,
                ARCH_FRONT_AFT_X,
                WHEEL_DIAMETER);
        add(
                centreText("arch-centre-rear-in-wheels", "Rear"),
                s -> Formula.Result.of(archCentre(s, ARCH_REAR_FORE_X, ARCH_REAR_AFT_X)
                        .minus(s.get(WHEELBASE))
                        .over(s.get(WHEEL_DIAMETER))),
                ARCH_REAR_FORE_X,
                ARCH_REAR_AFT_X,
                WHEELBASE,
                WHEEL_DIAMETER);
    }

    private void ratioOfOpening(String key, String end, Reading diameter, Reading fore, Reading aft) {
        add(
                new MeasureText(
                        key,
                        end + " arch opening over the tyre",
                        WHEELS,
                        RATIO,
                        3,
                        end
                                + " arch opening from its front edge to its rear edge, over the diameter of the tyre in it.",
                        "larger opening around the tyre"),
                s -> Formula.Result.of(s.get(aft).minus(s.get(fore)).over(s.get(diameter))),
                fore,
                aft,
                diameter);
    }

    private static MeasureText centreText(String key, String end) {
        return new MeasureText(
                key,
                end + " arch opening behind the wheel centre",
                WHEELS,
                RATIO,
                3,
                "Middle of the " + end.toLowerCase(Locale.ROOT)
                        + " arch opening, between its edges, behind the wheel centre, in tyre diameters; 0 right at it.",
                "opening further to the rear");
    }

    private void doors() {
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
}
