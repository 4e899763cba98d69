package studio.stancebook.proposal;

import java.util.Optional;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Legible;

/** What names and notes may be. */
public final class ProposalRules {

    /** Most characters of a name. */
    public static final int MOST_NAME = 200;
    /** Most characters of a note. */
    public static final int MOST_NOTE = 2000;
    /** Most characters of the reason of a decision. */
    public static final int MOST_REASON = 500;

    private ProposalRules() {}

    /** What is wrong with a name that has no blanks around it. */
    public static Optional<FieldError> name(String name) {
        return Legible.faultOfLine("a name", name, MOST_NAME).map(fault -> new FieldError("name", fault));
    }

    /** What is wrong with a note that has no blanks around it; line breaks are allowed. */
    public static Optional<FieldError> note(String note) {
        return Legible.faultOfText("a note", note, MOST_NOTE).map(fault -> new FieldError("note", fault));
    }

    /** What is wrong with the reason of a decision. */
    public static Optional<FieldError> reason(String reason) {
        return Legible.faultOfLine("a reason", reason, MOST_REASON).map(fault -> new FieldError("reason", fault));
    }

    /** What is wrong with both. */
    public static ErrorList errors(String name, String note) {
        ErrorList errors = new ErrorList();
        name(name).ifPresent(errors::add);
        note(note).ifPresent(errors::add);
        return errors;
    }
}
