package studio.stancebook.geometry;

import java.util.List;

/** How a side view stands to one off-road criterion. */
public sealed interface CriterionOutcome {

    /** Each quantity is at least what is asked. */
    record Met() implements CriterionOutcome {}

    /**
     * A quantity is less than what is asked.
     *
     * @param by how much the least of the measured quantities falls short, above 0, in the unit of the criterion
     */
    record Missed(double by) implements CriterionOutcome {}

    /**
     * No measured quantity falls short, but not all are measured.
     *
     * @param missing the quantities that are not
     */
    record Unmeasured(List<OffRoadQuantity> missing) implements CriterionOutcome {

        public Unmeasured {
            missing = List.copyOf(missing);
        }
    }
}
