package studio.stancebook.measure;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.UnderbodyExtent;
import studio.stancebook.geometry.DegenerateShape;
import studio.stancebook.geometry.OffRoadDimensions;
import studio.stancebook.geometry.OffRoadQuantity;

/**
 * What a dimension set says about off-road criteria: angles as the measures have them, clearances as recorded, else as the
 * underbody gives them. What an underbody gives that is recorded in part may be smaller on the vehicle: such an approach or
 * departure angle or running clearance can be missed but not met; of the ramp, whose middle decides, it is said only.
 */
public final class OffRoadReading {

    private final DimensionSet set;
    private final Subject subject;
    private final Map<OffRoadQuantity, String> reasons = new EnumMap<>(OffRoadQuantity.class);
    private final Set<OffRoadQuantity> atMost = EnumSet.noneOf(OffRoadQuantity.class);

    private OffRoadReading(DimensionSet set) {
        this.set = set;
        this.subject = new Subject(set);
    }

    /**
     * Running clearance is the ground clearance (H156), recorded or that of the lowest point of the underbody. Clearance
     * between the axles is that of the underbody where it is recorded, else the ground clearance, which it cannot fall below.
     * A sketch without dimensions has angles only.
     */
    public static OffRoadDimensions of(DimensionSet set) {
        return new OffRoadReading(set).read();
    }

    private OffRoadDimensions read() {
        return new OffRoadDimensions(
                angle("approach-angle", OffRoadQuantity.APPROACH),
                angle("departure-angle", OffRoadQuantity.DEPARTURE),
                angle("ramp-angle", OffRoadQuantity.RAMP),
                running(),
                length(Dimension.FRONT_AXLE_CLEARANCE, OffRoadQuantity.FRONT_AXLE_CLEARANCE),
                length(Dimension.REAR_AXLE_CLEARANCE, OffRoadQuantity.REAR_AXLE_CLEARANCE),
                betweenAxles(),
                reasons,
                atMost);
    }

    private OptionalDouble angle(String measure, OffRoadQuantity quantity) {
        MeasureValue value = MeasureRegistry.builtIn().get(measure).of(subject);
        if (value instanceof Measured measured) {
            say(quantity, measured.notes());
            return OptionalDouble.of(measured.value());
        }
        NotMeasurable none = (NotMeasurable) value;
        reasons.put(quantity, none.reason());
        return none.why() == NotMeasurable.Why.NOT_LIMITED
                ? OptionalDouble.of(Double.POSITIVE_INFINITY)
                : OptionalDouble.empty();
    }

    private void say(OffRoadQuantity quantity, Set<Note> notes) {
        if (!notes.isEmpty()) {
            reasons.put(quantity, notes.stream().sorted().map(Note::label).collect(Collectors.joining(", ")));
        }
        boolean inPart = notes.stream().anyMatch(note -> note.kind() == Note.NoteKind.UNDERBODY_IN_PART);
        if (inPart && quantity != OffRoadQuantity.RAMP) {
            atMost.add(quantity);
        }
    }

    private boolean unscaled(OffRoadQuantity quantity) {
        if (set.scale() == Scale.UNSCALED) {
            reasons.put(
                    quantity, NotMeasurable.because(NotMeasurable.Why.UNSCALED).reason());
            return true;
        }
        return false;
    }

    private OptionalDouble length(Dimension dimension, OffRoadQuantity quantity) {
        if (unscaled(quantity)) {
            return OptionalDouble.empty();
        }
        OptionalDouble recorded = set.scalar(dimension);
        if (recorded.isEmpty()) {
            reasons.put(quantity, NotMeasurable.needs(List.of(dimension.key())));
        }
        return recorded;
    }

    private OptionalDouble running() {
        OffRoadQuantity quantity = OffRoadQuantity.RUNNING_CLEARANCE;
        if (unscaled(quantity)) {
            return OptionalDouble.empty();
        }
        if (!subject.readings().has(Reading.GROUND_CLEARANCE)) {
            reasons.put(quantity, NotMeasurable.needs(List.of(Reading.GROUND_CLEARANCE.takenFrom())));
            return OptionalDouble.empty();
        }
        if (set.scalar(Dimension.GROUND_CLEARANCE).isEmpty()) {
            fromUnderbody(quantity);
        }
        return OptionalDouble.of(subject.get(Reading.GROUND_CLEARANCE).value());
    }

    private void fromUnderbody(OffRoadQuantity quantity) {
        UnderbodyExtent extent = UnderbodyExtent.of(subject.readings());
        if (!extent.wholeVehicle()) {
            reasons.put(quantity, extent.text());
            atMost.add(quantity);
        }
    }

    private OptionalDouble betweenAxles() {
        OffRoadQuantity quantity = OffRoadQuantity.CLEARANCE_BETWEEN_AXLES;
        if (unscaled(quantity)) {
            return OptionalDouble.empty();
        }
        OptionalDouble drawn = underbody();
        return drawn.isPresent() ? drawn : length(Dimension.GROUND_CLEARANCE, quantity);
    }

    private OptionalDouble underbody() {
        if (!Underside.recorded(subject)) {
            return OptionalDouble.empty();
        }
        try {
            return subject.underbody().clearanceMm();
        } catch (DegenerateShape tyresOverlap) {
            return OptionalDouble.empty();
        }
    }
}
