package studio.stancebook.problem;

import java.util.List;

/** The request was understood, but what it says cannot be. */
public class Impossible extends Refusal {

    public Impossible(String message) {
        super(ProblemType.IMPOSSIBLE, message);
    }

    public Impossible(String message, List<FieldError> errors) {
        super(ProblemType.IMPOSSIBLE, message, errors);
    }

    public Impossible(String message, ErrorList errors) {
        super(ProblemType.IMPOSSIBLE, message, errors);
    }

    /** A refusal of at least one field. */
    public static Impossible of(ErrorList errors) {
        return new Impossible(
                errors.count() == 1 ? errors.firstMessage() : errors.count() + " fields cannot be accepted.", errors);
    }

    /** A refusal of one field, whose message serves for the whole. */
    public static Impossible ofField(String field, String message) {
        return new Impossible(message, List.of(new FieldError(field, message)));
    }
}
