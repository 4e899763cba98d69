package studio.stancebook.problem;

import java.util.List;

/** What is asked for contradicts what is stored, such as a name that is taken. */
public class Conflict extends Refusal {

    public Conflict(String message) {
        super(ProblemType.CONFLICT, message);
    }

    public Conflict(String message, List<FieldError> errors) {
        super(ProblemType.CONFLICT, message, errors);
    }

    /** A conflict of one field, whose message serves for the whole. */
    public static Conflict ofField(String field, String message) {
        return new Conflict(message, List.of(new FieldError(field, message)));
    }
}
