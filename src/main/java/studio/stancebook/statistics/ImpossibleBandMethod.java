package studio.stancebook.statistics;

import java.util.List;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/** A band asked for with a number that no band can have. */
public class ImpossibleBandMethod extends Impossible {

    /**
     * @param field the name of the number, as in {@link BandMethod}
     * @param message the value given and what is accepted
     */
    public ImpossibleBandMethod(String field, String message) {
        super(message, List.of(new FieldError(field, message)));
    }

    static void requireInside(String field, double share) {
        if (!(share > 0 && share < 1)) {
            throw new ImpossibleBandMethod(
                    field, field + " is " + share + "; it must be between 0 and 1, ends excluded");
        }
    }
}
