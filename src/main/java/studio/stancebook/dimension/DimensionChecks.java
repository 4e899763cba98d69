package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;

/** The checks of an entry by hand: everything in range and everything closing, or a refusal that names all of it. */
public final class DimensionChecks {

    private DimensionChecks() {}

    /**
     * @param furtherDisagreements found by computing, such as a typed approach angle against the underbody
     * @throws ImpossibleDimensions naming each field under {@code dimensions.}
     */
    public static void requireSound(DimensionSet set, List<Disagreement> furtherDisagreements) {
        List<FieldError> errors = new ArrayList<>();
        RangeChecks.problemsOf(set).forEach(problem -> errors.add(under(problem.field(), problem.message())));
        List<Disagreement> disagreements = new ArrayList<>(ClosingChecks.of(set));
        disagreements.addAll(furtherDisagreements);
        disagreements.forEach(d -> errors.add(under(d.keys().get(0), d.message())));
        if (!errors.isEmpty()) {
            throw new ImpossibleDimensions(ErrorList.of(errors));
        }
    }

    private static FieldError under(String field, String message) {
        return new FieldError("dimensions." + field, message);
    }
}
