package studio.stancebook.problem;

import java.util.List;
import java.util.Objects;

/** Base of the exceptions that a person caused and can mend; message and field errors are safe to show. */
public abstract class Refusal extends RuntimeException {

    private final ProblemType type;
    private final transient List<FieldError> errors;
    private final int errorCount;

    protected Refusal(ProblemType type, String message, ErrorList errors) {
        super(message);
        this.type = type;
        this.errors = errors.listed();
        this.errorCount = errors.count();
    }

    protected Refusal(ProblemType type, String message, List<FieldError> errors) {
        this(type, message, ErrorList.of(errors));
    }

    protected Refusal(ProblemType type, String message) {
        this(type, message, new ErrorList());
    }

    public ProblemType type() {
        return type;
    }

    /** The fields at fault, the first {@value ErrorList#MOST_LISTED}; empty when the request as a whole is refused. */
    public List<FieldError> errors() {
        return errors;
    }

    /** How many fields are at fault. */
    public int errorCount() {
        return errorCount;
    }

    /** The message, which every refusal has. */
    public String detail() {
        return Objects.requireNonNull(getMessage());
    }
}
