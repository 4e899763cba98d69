package studio.stancebook.geometry;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One criterion of an off-road definition: each of its quantities is at least a given value. Values are compared as they
 * are, not rounded, since neither text says to round.
 *
 * @param key its name in JSON
 * @param quantities one quantity, or several that count as one criterion; all of one unit
 * @param least what each must reach, in the unit of the quantities
 */
public record OffRoadCriterion(String key, List<OffRoadQuantity> quantities, double least) {

    public OffRoadCriterion {
        quantities = List.copyOf(quantities);
    }

    static OffRoadCriterion of(OffRoadQuantity quantity, double least) {
        return new OffRoadCriterion(quantity.key(), List.of(quantity), least);
    }

    /** {@code deg} or {@code mm}. */
    public String unit() {
        return quantities.get(0).unit();
    }

    /** Missed as soon as one measured quantity falls short, even if another is not measured. */
    CriterionOutcome judge(OffRoadDimensions dimensions) {
        double lowest = lowest(dimensions).orElse(Double.POSITIVE_INFINITY);
        if (lowest < least) {
            return new CriterionOutcome.Missed(least - lowest);
        }
        List<OffRoadQuantity> missing = quantities.stream()
                .filter(quantity ->
                        dimensions.of(quantity).isEmpty() || dimensions.atMost().contains(quantity))
                .toList();
        return missing.isEmpty() ? new CriterionOutcome.Met() : new CriterionOutcome.Unmeasured(missing);
    }

    /** The least of its measured quantities; empty where none is measured. */
    OptionalDouble lowest(OffRoadDimensions dimensions) {
        return quantities.stream()
                .map(dimensions::of)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min();
    }

    /** What must be said of its quantities. */
    List<String> reasons(OffRoadDimensions dimensions) {
        return quantities.stream()
                .map(dimensions.reasons()::get)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }
}
