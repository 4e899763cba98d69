package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.FRONT_CENTRE_HEIGHT;
import static studio.stancebook.dimension.Reading.REAR_CENTRE_HEIGHT;
import static studio.stancebook.dimension.Reading.WHEELBASE;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Readings;
import studio.stancebook.dimension.UnderbodyExtent;
import studio.stancebook.dimension.UnderbodyExtent.Reach;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.AnglePartials;
import studio.stancebook.geometry.DegenerateShape;
import studio.stancebook.geometry.LimitedAngle;
import studio.stancebook.geometry.Point;
import studio.stancebook.geometry.TyreArc;
import studio.stancebook.geometry.UnderbodyAngles;

/** The underbody of one side view on its tyres: the ISO 612 angles as estimates. */
final class Underside {

    private final UnderbodyExtent extent;
    private final Readings readings;
    private final UnderbodyAngles angles;

    private Underside(UnderbodyExtent extent, Readings readings, UnderbodyAngles angles) {
        this.extent = extent;
        this.readings = readings;
        this.angles = angles;
    }

    /** True when the underbody and both tyres are recorded. */
    static boolean recorded(Subject subject) {
        return !subject.set().points(Polyline.UNDERBODY).isEmpty()
                && subject.readings().has(FRONT_CENTRE_HEIGHT)
                && subject.readings().has(REAR_CENTRE_HEIGHT);
    }

    /** @throws DegenerateShape if the tyres overlap */
    static Underside of(DimensionSet set, Readings readings) {
        List<Point> body = set.points(Polyline.UNDERBODY);
        double wheelbase = readings.get(WHEELBASE).value();
        TyreArc front = TyreArc.onGround(0, readings.get(FRONT_CENTRE_HEIGHT).value());
        TyreArc rear =
                TyreArc.onGround(wheelbase, readings.get(REAR_CENTRE_HEIGHT).value());
        return new Underside(UnderbodyExtent.of(readings), readings, UnderbodyAngles.of(wheelbase, front, rear, body));
    }

    /**
     * From geometry where it is recorded, else as typed. Where the underbody ends short of what the angle is about it only
     * says what the angle is at most, so a typed angle is taken first; and that nothing limits the angle can only be said
     * where the underbody is recorded as far as it goes.
     */
    static Formula.Result angle(Subject subject, UnderbodyAngle which) {
        OptionalDouble typed = subject.set().scalar(which.typed());
        if (!recorded(subject)) {
            return typedResult(which, typed.orElseThrow());
        }
        Underside underside = subject.underbody();
        Reach reach = underside.reachFor(which);
        Optional<Estimate> computed = underside.estimate(which);
        if (computed.isEmpty() && reach == Reach.COMPLETE) {
            return Formula.Result.none(NotMeasurable.Why.NOT_LIMITED);
        }
        if (typed.isPresent() && (computed.isEmpty() || reach == Reach.SHORT)) {
            return typedResult(which, typed.getAsDouble());
        }
        return computed.map(angle -> Formula.Result.of(angle, underside.notes(subject.set(), which, reach)))
                .orElseGet(() -> Formula.Result.none(underside.inPart(which)));
    }

    private static Formula.Result typedResult(UnderbodyAngle which, double deg) {
        return Formula.Result.of(typed(which.typed(), deg), Set.of(Note.TYPED));
    }

    private Set<Note> notes(DimensionSet set, UnderbodyAngle which, Reach reach) {
        Set<Note> notes = new HashSet<>(tyreNotes(set, which));
        if (reach == Reach.SHORT) {
            notes.add(inPart());
        }
        return notes;
    }

    private NotMeasurable inPart(UnderbodyAngle which) {
        return new NotMeasurable(
                NotMeasurable.Why.RECORDED_IN_PART,
                List.of(which.typed().key() + ", or " + which.extent()),
                extent.text());
    }

    /** Whether the underbody is recorded as far as an angle asks for. */
    Reach reachFor(UnderbodyAngle which) {
        return switch (which) {
            case APPROACH -> extent.nose();
            case DEPARTURE -> extent.tail();
            case RAMP -> extent.betweenTyres();
        };
    }

    private Note inPart() {
        return new Note(Note.NoteKind.UNDERBODY_IN_PART, extent.text());
    }

    static Estimate typed(Dimension dimension, double value) {
        return Estimate.of(Variable.of(dimension), value);
    }

    /** The computed angle with its sensitivities; empty where nothing limits it. */
    Optional<Estimate> estimate(UnderbodyAngle which) {
        return limited(which).map(this::withSensitivities);
    }

    /** Height of the lowest rigid point between the axles, mm and not below 0; empty when there is none between them. */
    OptionalDouble clearanceMm() {
        OptionalDouble clearance = angles.groundClearanceMm();
        return clearance.isPresent() ? OptionalDouble.of(Math.max(0, clearance.getAsDouble())) : clearance;
    }

    private Optional<LimitedAngle> limited(UnderbodyAngle which) {
        return switch (which) {
            case APPROACH -> angles.approach();
            case DEPARTURE -> angles.departure();
            case RAMP -> angles.ramp();
        };
    }

    private Estimate withSensitivities(LimitedAngle angle) {
        Estimate held = Estimate.constant(angle.deg());
        return angle.partials().map(partials -> following(held, partials)).orElse(held);
    }

    private Estimate following(Estimate angle, AnglePartials partials) {
        return angle.plus(change(Estimate.of(Variable.x(Polyline.UNDERBODY), 0), partials.touchX()))
                .plus(change(Estimate.of(Variable.z(Polyline.UNDERBODY), 0), partials.touchZ()))
                .plus(change(readings.get(WHEELBASE), partials.wheelbase()))
                .plus(change(readings.get(FRONT_CENTRE_HEIGHT), partials.frontCentreHeight() + partials.frontRadius()))
                .plus(change(readings.get(REAR_CENTRE_HEIGHT), partials.rearCentreHeight() + partials.rearRadius()));
    }

    /** What {@code partial} makes of a change of {@code input}: value 0, the input's sensitivities scaled. */
    private static Estimate change(Estimate input, double partial) {
        return input.minus(Estimate.constant(input.value())).times(partial);
    }

    private static Set<Note> tyreNotes(DimensionSet set, UnderbodyAngle which) {
        return which.axles().stream()
                        .allMatch(axle -> set.scalar(axle.loadedRadius()).isPresent())
                ? Set.of()
                : Set.of(Note.UNLOADED_TYRE);
    }
}
