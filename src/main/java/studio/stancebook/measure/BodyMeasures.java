package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.*;
import static studio.stancebook.measure.Formulas.slope;
import static studio.stancebook.measure.MeasureGroup.*;
import static studio.stancebook.measure.MeasureUnit.*;

import java.util.List;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.Measure.MeasureText;

/** Tyres, shares of the body, lines, underbody angles and areas. */
final class BodyMeasures extends MeasureList {

    BodyMeasures() {
        tyres();
        shares();
        lines();
        underbody();
        areas();
    }

    private void tyres() {
        ratio(
                new MeasureText(
                        "tyre-stagger",
                        "Tyre stagger (rear / front diameter)",
                        TYRES,
                        RATIO,
                        3,
                        "Rear overall tyre diameter over the front one.",
                        "larger rear tyres"),
                REAR_TYRE_DIAMETER,
                FRONT_TYRE_DIAMETER);
        sidewall("sidewall-share", "Sidewall share", "front", FRONT_TYRE_DIAMETER, FRONT_RIM_DIAMETER);
        rim("rim-share", "Rim share", "front", FRONT_TYRE_DIAMETER, FRONT_RIM_DIAMETER);
        sidewall("rear-sidewall-share", "Rear sidewall share", "rear", REAR_TYRE_DIAMETER, REAR_RIM_DIAMETER);
        rim("rear-rim-share", "Rear rim share", "rear", REAR_TYRE_DIAMETER, REAR_RIM_DIAMETER);
    }

    private void sidewall(String key, String name, String axle, Reading diameter, Reading rim) {
        String definition = "Section height of the " + axle + " tyre over its overall diameter.";
        add(
                new MeasureText(key, name, TYRES, RATIO, 3, definition, "more rubber over the rim"),
                s -> Formula.Result.of(
                        s.get(diameter).minus(s.get(rim)).times(0.5).over(s.get(diameter))),
                diameter,
                rim);
    }

    private void rim(String key, String name, String axle, Reading diameter, Reading rim) {
        String definition = "Rim diameter over overall diameter of the " + axle + " tyre.";
        ratio(new MeasureText(key, name, TYRES, RATIO, 3, definition, "larger rim in the wheel"), rim, diameter);
    }

    private void shares() {
        share(
                "wheelbase-share",
                "Wheelbase / length",
                "Wheelbase over overall length.",
                "wheels further out",
                WHEELBASE,
                OVERALL_LENGTH);
        share(
                "front-overhang-share",
                "Front overhang / length",
                "Front overhang over overall length.",
                "longer nose",
                FRONT_OVERHANG,
                OVERALL_LENGTH);
        share(
                "rear-overhang-share",
                "Rear overhang / length",
                "Rear overhang over overall length.",
                "longer tail",
                REAR_OVERHANG,
                OVERALL_LENGTH);
        share(
                "overhang-balance",
                "Rear overhang / front overhang",
                "Rear overhang over front overhang.",
                "longer tail than nose",
                REAR_OVERHANG,
                FRONT_OVERHANG);
        share(
                "height-to-length",
                "Height / length",
                "Overall height over overall length.",
                "taller for its length",
                OVERALL_HEIGHT,
                OVERALL_LENGTH);
        share(
                "height-to-width",
                "Height / width",
                "Overall height over overall width.",
                "taller for its width",
                OVERALL_HEIGHT,
                OVERALL_WIDTH);
        share(
                "wheelbase-to-height",
                "Wheelbase / height",
                "Wheelbase over overall height.",
                "longer for its height",
                WHEELBASE,
                OVERALL_HEIGHT);
        share(
                "rear-track-to-width",
                "Rear track / width",
                "Rear track over overall width.",
                "rear wheels further out to the sides",
                REAR_TRACK,
                OVERALL_WIDTH);
        share(
                "h-point-position",
                "H-point along the wheelbase",
                "Position of the H-point behind the front wheel centre, over the wheelbase.",
                "people sit further to the rear",
                H_POINT_X,
                WHEELBASE);
        share(
                "track-to-width",
                "Track / width",
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
                        "Bonnet / length",
                        "From the nose to the cowl over overall length.",
                        "longer bonnet"),
                s -> Formula.Result.of(s.get(COWL_X).plus(s.get(FRONT_OVERHANG)).over(s.get(OVERALL_LENGTH))),
                COWL_X,
                FRONT_OVERHANG,
                OVERALL_LENGTH);
        add(
                shareText(
                        "cabin-share",
                        "Cabin / length",
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
                "Seat height / height",
                "Seating reference height (H5) over overall height.",
                "people sit higher in the body",
                SEAT_HEIGHT,
                OVERALL_HEIGHT);
    }

    private void lines() {
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

    private void underbody() {
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

    private void areas() {
        add(
                new MeasureText(
                        "profile-fill",
                        "Side-view fullness",
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
}
