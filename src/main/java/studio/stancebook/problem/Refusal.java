package studio.stancebook.problem;

import java.util.List;
import java.util.Objects;

/** Base of the exceptions that a person caused and can mend; message and field errors are safe to show. */
public abstract class Refusal extends RuntimeException {

    private final ProblemType type;
    private final transient List<FieldError> errors;

    protected Refusal(ProblemType type, String message, List<FieldError> errors) {
        super(message);
        this.type = type;
        this.errors = List.copyOf(errors);
    }

    protected Refusal(ProblemType type, String message) {
        this(type, message, List.of());
    }

    public ProblemType type() {
        return type;
    }

    /** The fields at fault; empty when the request as a whole is refused. */
    public List<FieldError> errors() {
        return errors;
    }

    /** The message, which every refusal has. */
    public String detail() {
        return Objects.requireNonNull(getMessage());
    }
}
