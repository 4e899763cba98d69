package studio.stancebook.dimension;

import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/** A dimension set that cannot be: unknown names, unreadable values, out of range, or not closing. */
public final class ImpossibleDimensions extends Impossible {

    /** @param errors at least one, each naming a field under {@code dimensions.} */
    public ImpossibleDimensions(ErrorList errors) {
        super(summary(errors), errors);
    }

    private static String summary(ErrorList errors) {
        FieldError first = errors.listed().get(0);
        String told = first.field() + ": " + first.message();
        return errors.count() == 1 ? told : told + " (and " + (errors.count() - 1) + " more)";
    }
}
