package studio.stancebook.measure;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;

/** One thing that a measure cannot do without. */
final class Need {

    private static final Set<Reading> OF_TYRES = EnumSet.of(
            Reading.WHEEL_DIAMETER,
            Reading.FRONT_TYRE_DIAMETER,
            Reading.REAR_TYRE_DIAMETER,
            Reading.FRONT_CENTRE_HEIGHT,
            Reading.REAR_CENTRE_HEIGHT);

    private final String takenFrom;
    private final Predicate<Subject> met;
    private final boolean ofTyre;

    private Need(String takenFrom, Predicate<Subject> met, boolean ofTyre) {
        this.takenFrom = takenFrom;
        this.met = met;
        this.ofTyre = ofTyre;
    }

    static Need of(Reading reading) {
        return new Need(reading.takenFrom(), subject -> subject.readings().has(reading), OF_TYRES.contains(reading));
    }

    static Need of(Polyline polyline) {
        return new Need(
                polyline.key(), subject -> !subject.set().points(polyline).isEmpty(), false);
    }

    /** An angle of the underbody, from geometry or typed. */
    static Need of(UnderbodyAngle angle) {
        return new Need(
                "underbody with frontTyre and rearTyre, or " + angle.typed().key(),
                subject -> Underside.recorded(subject)
                        || subject.set().scalar(angle.typed()).isPresent(),
                true);
    }

    /** What has to be recorded, in JSON names. */
    String takenFrom() {
        return takenFrom;
    }

    boolean met(Subject subject) {
        return met.test(subject);
    }

    boolean ofTyre() {
        return ofTyre;
    }
}
