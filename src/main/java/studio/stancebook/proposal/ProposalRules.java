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

    private ProposalRules() {}

    /** What is wrong with a name that has no blanks around it. */
    public static Optional<FieldError> name(String name) {
        boolean fine = !name.isEmpty() && name.length() <= MOST_NAME && Legible.isLine(name);
        return fine
                ? Optional.empty()
                : Optional.of(new FieldError(
                        "name",
                        "A name has 1 to " + MOST_NAME
                                + " characters on one line, without control characters, invisible characters or turns of direction, not "
                                + shown(name) + "."));
    }

    /** What is wrong with a note that has no blanks around it; line breaks are allowed. */
    public static Optional<FieldError> note(String note) {
        return Legible.isText(note) && note.length() <= MOST_NOTE
                ? Optional.empty()
                : Optional.of(new FieldError(
                        "note",
                        "A note has at most " + MOST_NOTE
                                + " characters, no control characters and no turns of direction, not " + shown(note)
                                + "."));
    }

    /** What is wrong with both. */
    public static ErrorList errors(String name, String note) {
        ErrorList errors = new ErrorList();
        name(name).ifPresent(errors::add);
        note(note).ifPresent(errors::add);
        return errors;
    }

    private static String shown(String text) {
        String line = Legible.shown(text);
        return "\"" + (line.length() <= 40 ? line : line.substring(0, 40) + "…") + "\"";
    }
}
