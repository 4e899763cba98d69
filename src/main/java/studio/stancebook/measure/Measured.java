package studio.stancebook.measure;

import java.util.Map;
import java.util.Set;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Variable;

/**
 * A value with its uncertainty.
 *
 * @param estimate the value in the measure's unit, finite, with its sensitivities
 * @param uncertainty the combined standard uncertainty (JCGM 100, first order), not negative
 * @param notes what must be said beside it
 */
public record Measured(Estimate estimate, double uncertainty, Set<Note> notes) implements MeasureValue {

    public Measured {
        notes = Set.copyOf(notes);
        if (!Double.isFinite(estimate.value()) || !(uncertainty >= 0)) {
            throw new IllegalArgumentException("A measured value is finite and its uncertainty not negative, got "
                    + estimate.value() + " and " + uncertainty);
        }
    }

    public double value() {
        return estimate.value();
    }

    /** Change of the value per unit of each recorded variable. */
    public Map<Variable, Double> sensitivities() {
        return estimate.sensitivities();
    }
}
