package studio.stancebook.exchange.mapping;

import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.Impossible;

/** A mapping that does not fit its table, or says the same thing twice. */
public final class ImpossibleMapping extends Impossible {

    /** @param errors at least one, each naming a field under {@code mapping} */
    public ImpossibleMapping(ErrorList errors) {
        super(
                errors.count() == 1
                        ? errors.firstMessage()
                        : errors.firstMessage() + " (and " + (errors.count() - 1) + " more)",
                errors);
    }
}
