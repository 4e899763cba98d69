package studio.stancebook.measure;

import studio.stancebook.dimension.Dimension;

/** The three angles of the underbody, each with the dimension under which a typed value is recorded. */
enum UnderbodyAngle {
    APPROACH(Dimension.APPROACH_ANGLE, "the underbody as far as the nose"),
    DEPARTURE(Dimension.DEPARTURE_ANGLE, "the underbody as far as the tail"),
    RAMP(Dimension.RAMP_ANGLE, "the underbody from tyre to tyre");

    private final Dimension typed;
    private final String extent;

    UnderbodyAngle(Dimension typed, String extent) {
        this.typed = typed;
        this.extent = extent;
    }

    /** How far the underbody has to be recorded, in words. */
    String extent() {
        return extent;
    }

    Dimension typed() {
        return typed;
    }
}
