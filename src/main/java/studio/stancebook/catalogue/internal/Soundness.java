package studio.stancebook.catalogue.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import studio.stancebook.dimension.ClosingChecks;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Disagreement;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.measure.MeasureChecks;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;

/** What dimensions have to fulfil to be recorded. */
public final class Soundness {

    private Soundness() {}

    /** Everything in range and everything closing. */
    static void requireEnteredByHand(DimensionSet set) {
        MeasureChecks.requireSound(set);
    }

    /** Everything in range. */
    public static void requireInRange(DimensionSet set) {
        refuse(rangeErrors(set));
    }

    /** Everything in range, and everything closing but for what did not close before and is as it was. */
    static void requireStillSound(DimensionSet before, DimensionSet after) {
        Set<Disagreement> known = new HashSet<>(disagreements(before));
        List<FieldError> errors = rangeErrors(after);
        disagreements(after).stream()
                .filter(disagreement -> !known.contains(disagreement))
                .map(disagreement -> under(disagreement.keys().get(0), disagreement.message()))
                .forEach(errors::add);
        refuse(errors);
    }

    /** What was recorded twice and does not agree with itself. */
    public static List<Disagreement> disagreements(DimensionSet set) {
        List<Disagreement> all = new ArrayList<>(ClosingChecks.of(set));
        all.addAll(MeasureChecks.disagreements(set));
        return all;
    }

    private static List<FieldError> rangeErrors(DimensionSet set) {
        List<FieldError> errors = new ArrayList<>();
        RangeChecks.problemsOf(set).forEach(problem -> errors.add(under(problem.field(), problem.message())));
        return errors;
    }

    private static FieldError under(String field, String message) {
        return new FieldError("dimensions." + field, message);
    }

    private static void refuse(List<FieldError> errors) {
        if (!errors.isEmpty()) {
            throw new ImpossibleDimensions(ErrorList.of(errors));
        }
    }
}
