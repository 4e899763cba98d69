package studio.stancebook.measure;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.DimensionSet;
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
    private final @Nullable Axle standing;

    private Need(String takenFrom, Predicate<Subject> met, boolean ofTyre, @Nullable Axle standing) {
        this.takenFrom = takenFrom;
        this.met = met;
        this.ofTyre = ofTyre;
        this.standing = standing;
    }

    static Need of(Reading reading) {
        return new Need(
                reading.takenFrom(),
                subject -> subject.readings().has(reading),
                OF_TYRES.contains(reading),
                standing(reading));
    }

    private static @Nullable Axle standing(Reading reading) {
        return switch (reading) {
            case FRONT_CENTRE_HEIGHT -> Axle.FRONT;
            case REAR_CENTRE_HEIGHT -> Axle.REAR;
            default -> null;
        };
    }

    static Need of(Polyline polyline) {
        return new Need(
                polyline.key(), subject -> !subject.set().points(polyline).isEmpty(), false, null);
    }

    /** An angle of the underbody, from geometry or typed. */
    static Need of(UnderbodyAngle angle) {
        return new Need(
                "underbody with frontTyre and rearTyre, or " + angle.typed().key(),
                subject -> Underside.recorded(subject)
                        || subject.set().scalar(angle.typed()).isPresent(),
                true,
                null);
    }

    /** What has to be recorded, in JSON names. */
    String takenFrom() {
        return takenFrom;
    }

    boolean met(Subject subject) {
        return met.test(subject);
    }

    /** Whether it is the height of a wheel centre that stands on a tyre whose loaded radius is not recorded. */
    boolean onUnloadedTyre(DimensionSet set) {
        return standing != null && set.scalar(standing.loadedRadius()).isEmpty();
    }

    boolean ofTyre() {
        return ofTyre;
    }
}
