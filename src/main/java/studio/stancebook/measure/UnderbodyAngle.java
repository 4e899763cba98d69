package studio.stancebook.measure;

import studio.stancebook.dimension.Dimension;

/** The three angles of the underbody, each with the dimension under which a typed value is recorded. */
enum UnderbodyAngle {
    APPROACH(Dimension.APPROACH_ANGLE),
    DEPARTURE(Dimension.DEPARTURE_ANGLE),
    RAMP(Dimension.RAMP_ANGLE);

    private final Dimension typed;

    UnderbodyAngle(Dimension typed) {
        this.typed = typed;
    }

    Dimension typed() {
        return typed;
    }
}
