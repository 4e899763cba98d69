package studio.stancebook.measure;

import java.util.List;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;

/** The three angles of the underbody, each with the dimension under which a typed value is recorded. */
enum UnderbodyAngle {
    APPROACH(Dimension.APPROACH_ANGLE, List.of(Axle.FRONT), "the underbody as far as the nose"),
    DEPARTURE(Dimension.DEPARTURE_ANGLE, List.of(Axle.REAR), "the underbody as far as the tail"),
    RAMP(Dimension.RAMP_ANGLE, List.of(Axle.FRONT, Axle.REAR), "the underbody from tyre to tyre");

    private final Dimension typed;
    private final List<Axle> axles;
    private final String extent;

    UnderbodyAngle(Dimension typed, List<Axle> axles, String extent) {
        this.typed = typed;
        this.axles = axles;
        this.extent = extent;
    }

    /** Whose tyres the angle is at. */
    List<Axle> axles() {
        return axles;
    }

    /** How far the underbody has to be recorded, in words. */
    String extent() {
        return extent;
    }

    Dimension typed() {
        return typed;
    }
}
