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

    /** A refusal of at least one field. */
    public static Impossible ofFields(List<FieldError> errors) {
        String one = errors.get(0).message();
        return new Impossible(errors.size() == 1 ? one : errors.size() + " fields cannot be accepted.", errors);
    }

    /** A refusal of one field, whose message serves for the whole. */
    public static Impossible ofField(String field, String message) {
        return new Impossible(message, List.of(new FieldError(field, message)));
    }
}
