package studio.stancebook.problem;

import java.util.List;

/** The request cannot be read as what it claims to be. */
public class Malformed extends Refusal {

    public Malformed(String message) {
        super(ProblemType.MALFORMED, message);
    }

    public Malformed(String message, List<FieldError> errors) {
        super(ProblemType.MALFORMED, message, errors);
    }

    /** A refusal of one field, whose message serves for the whole. */
    public static Malformed ofField(String field, String message) {
        return new Malformed(message, List.of(new FieldError(field, message)));
    }
}
