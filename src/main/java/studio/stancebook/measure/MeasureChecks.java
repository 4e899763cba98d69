package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.dimension.ClosingChecks;
import studio.stancebook.dimension.DimensionChecks;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Disagreement;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.UnderbodyExtent.Reach;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.DegenerateShape;

/**
 * Compares typed underbody angles with those that the recorded underbody gives. One that is recorded in part gives what an
 * angle is at most, so a smaller typed angle agrees with it.
 */
public final class MeasureChecks {

    private MeasureChecks() {}

    /**
     * Everything in range and everything closing, as an entry by hand must be.
     *
     * @throws studio.stancebook.dimension.ImpossibleDimensions naming each field under {@code dimensions.}
     */
    public static void requireSound(DimensionSet set) {
        DimensionChecks.requireSound(set, disagreements(set));
    }

    /** What does not agree; empty when nothing is recorded twice, or the underbody cannot be computed on its tyres. */
    public static List<Disagreement> disagreements(DimensionSet set) {
        Subject subject = new Subject(set);
        if (!Underside.recorded(subject)) {
            return List.of();
        }
        try {
            return disagreements(set, subject.underbody());
        } catch (DegenerateShape tyresOverlap) {
            return List.of();
        }
    }

    private static List<Disagreement> disagreements(DimensionSet set, Underside underside) {
        List<Disagreement> found = new ArrayList<>();
        for (UnderbodyAngle angle : UnderbodyAngle.values()) {
            OptionalDouble typed = set.scalar(angle.typed());
            if (typed.isPresent()) {
                underside
                        .estimate(angle)
                        .filter(computed ->
                                typed.getAsDouble() > computed.value() || underside.reachFor(angle) != Reach.SHORT)
                        .flatMap(computed -> compared(set, angle, typed.getAsDouble(), computed))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private static Optional<Disagreement> compared(
            DimensionSet set, UnderbodyAngle angle, double typed, Estimate computed) {
        return ClosingChecks.compared(
                set,
                List.of(angle.typed().key(), "underbody"),
                angle.typed().label(),
                Underside.typed(angle.typed(), typed),
                computed,
                Unit.DEG);
    }
}
