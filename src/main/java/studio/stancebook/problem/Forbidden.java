package studio.stancebook.problem;

/** The person's role does not allow what was asked. */
public class Forbidden extends Refusal {

    public Forbidden(String message) {
        super(ProblemType.FORBIDDEN, message);
    }
}
