package studio.stancebook.dimension.form;

import static studio.stancebook.dimension.Dimension.*;

import java.util.List;
import java.util.Locale;
import studio.stancebook.dimension.Dimension;

/** Which scalars stand together in the form; each stands in exactly one group. */
enum FormGroup {
    /** What matters first, with the tyres. */
    FIRST(WHEELBASE, FRONT_OVERHANG, REAR_OVERHANG, OVERALL_HEIGHT, GROUND_CLEARANCE),
    LENGTHS(OVERALL_LENGTH, DASH_TO_AXLE),
    TYRES(
            FRONT_TYRE_DIAMETER,
            REAR_TYRE_DIAMETER,
            FRONT_RIM_DIAMETER,
            REAR_RIM_DIAMETER,
            FRONT_LOADED_RADIUS,
            REAR_LOADED_RADIUS),
    WIDTHS(OVERALL_WIDTH, FRONT_TRACK, REAR_TRACK),
    HEIGHTS(COWL_HEIGHT, ROCKER_HEIGHT, SEAT_HEIGHT, CHAIR_HEIGHT),
    CLEARANCES(FRONT_AXLE_CLEARANCE, REAR_AXLE_CLEARANCE),
    ANGLES(SCREEN_ANGLE, BACKLIGHT_ANGLE, APPROACH_ANGLE, DEPARTURE_ANGLE, RAMP_ANGLE),
    MASS_AND_DRIVE(KERB_MASS, DRIVEN_AXLES);

    private final List<Dimension> dimensions;

    FormGroup(Dimension... dimensions) {
        this.dimensions = List.of(dimensions);
    }

    List<Dimension> dimensions() {
        return dimensions;
    }

    /** Ends the message key of its heading. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
