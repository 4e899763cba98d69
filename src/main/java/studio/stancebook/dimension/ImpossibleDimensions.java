package studio.stancebook.dimension;

import java.util.List;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/** A dimension set that cannot be: unknown names, unreadable values, out of range, or not closing. */
public final class ImpossibleDimensions extends Impossible {

    /** @param errors at least one, each naming a field under {@code dimensions.} */
    public ImpossibleDimensions(List<FieldError> errors) {
        super(summary(errors), errors);
    }

    private static String summary(List<FieldError> errors) {
        String first = errors.get(0).field() + ": " + errors.get(0).message();
        return errors.size() == 1 ? first : first + " (and " + (errors.size() - 1) + " more)";
    }
}
