package studio.stancebook.geometry;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a side view stands to the geometric part of an off-road definition.
 *
 * @param criteria the definition
 * @param lines one outcome for each of its criteria, in the same order
 */
public record OffRoadJudgement(OffRoadCriteria criteria, List<CriterionResult> lines) {

    /**
     * One criterion and its outcome.
     *
     * @param criterion what is asked
     * @param outcome met, missed or not measured
     * @param value the least of what was measured, infinite where nothing limits it; empty where nothing was measured
     * @param reasons what must be said beside it
     */
    public record CriterionResult(
            OffRoadCriterion criterion, CriterionOutcome outcome, OptionalDouble value, List<String> reasons) {

        public CriterionResult {
            reasons = List.copyOf(reasons);
        }

        static CriterionResult of(OffRoadCriterion criterion, OffRoadDimensions dimensions) {
            return new CriterionResult(
                    criterion,
                    criterion.judge(dimensions),
                    criterion.lowest(dimensions),
                    criterion.reasons(dimensions));
        }
    }

    /** What the count comes to. */
    public enum Conclusion {
        /** Enough criteria are met, whatever the unmeasured ones would give. */
        ENOUGH,
        /** Too few can be met, even if all unmeasured ones were. */
        TOO_FEW,
        /** It depends on criteria that are not measured. */
        OPEN
    }

    public OffRoadJudgement {
        lines = List.copyOf(lines);
    }

    /** How many criteria are met. */
    public int metCount() {
        return count(CriterionOutcome.Met.class);
    }

    /** How many criteria are neither met nor missed for want of a value. */
    public int unmeasuredCount() {
        return count(CriterionOutcome.Unmeasured.class);
    }

    public Conclusion verdict() {
        if (metCount() >= criteria.needed()) {
            return Conclusion.ENOUGH;
        }
        return metCount() + unmeasuredCount() < criteria.needed() ? Conclusion.TOO_FEW : Conclusion.OPEN;
    }

    private int count(Class<? extends CriterionOutcome> kind) {
        return (int)
                lines.stream().filter(line -> kind.isInstance(line.outcome())).count();
    }
}
