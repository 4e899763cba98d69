package studio.stancebook.classes.layout;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Variable;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;

/** Which recorded values the measures of one side view depend on. */
public final class Dependence {

    private final Subject subject;

    public Dependence(DimensionSet set) {
        subject = new Subject(set);
    }

    /** Whether a measure changes, to first order, with any of these dimensions. */
    public boolean dependsOnAny(Measure measure, Collection<String> dimensions) {
        if (dimensions.isEmpty()) {
            return false;
        }
        Set<String> keys = dependences(measure);
        keys.retainAll(dimensions);
        return !keys.isEmpty();
    }

    /** Whether a measure changes, to first order, with some of these dimensions and with no others. */
    public boolean dependsOnlyOn(Measure measure, Collection<String> dimensions) {
        if (dimensions.isEmpty()) {
            return false;
        }
        Set<String> keys = dependences(measure);
        return !keys.isEmpty() && dimensions.containsAll(keys);
    }

    private Set<String> dependences(Measure measure) {
        Set<String> keys = new HashSet<>();
        if (!(measure.of(subject) instanceof Measured measured)) {
            return keys;
        }
        measured.sensitivities().forEach((variable, sensitivity) -> {
            if (sensitivity != 0) {
                keys.addAll(dimensionsOf(variable));
            }
        });
        return keys;
    }

    private static List<String> dimensionsOf(Variable variable) {
        return variable == Variable.TYRE_DIAMETER
                ? List.of(
                        Axle.FRONT.tyreDiameter().key(),
                        Axle.REAR.tyreDiameter().key())
                : List.of(variable.valueKey());
    }
}
