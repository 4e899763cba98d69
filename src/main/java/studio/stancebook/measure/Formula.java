package studio.stancebook.measure;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Estimate;

/** How a measure is computed once its readings are there. */
@FunctionalInterface
interface Formula {

    /** What a formula gives: an estimate with notes, or nothing and why. */
    record Result(
            @Nullable Estimate estimate,
            Set<Note> notes,
            @Nullable NotMeasurable none) {

        static Result of(Estimate estimate) {
            return new Result(estimate, Set.of(), null);
        }

        static Result of(Estimate estimate, Set<Note> notes) {
            return new Result(estimate, notes, null);
        }

        static Result none(NotMeasurable.Why why) {
            return none(NotMeasurable.because(why));
        }

        static Result none(NotMeasurable none) {
            return new Result(null, Set.of(), none);
        }
    }

    Result apply(Subject subject);
}
