package studio.stancebook.exchange.mapping;

import java.util.List;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/** A mapping that does not fit its table, or says the same thing twice. */
public final class ImpossibleMapping extends Impossible {

    /** @param errors at least one, each naming a field under {@code mapping} */
    public ImpossibleMapping(List<FieldError> errors) {
        super(
                errors.size() == 1
                        ? errors.get(0).message()
                        : errors.get(0).message() + " (and " + (errors.size() - 1) + " more)",
                errors);
    }
}
