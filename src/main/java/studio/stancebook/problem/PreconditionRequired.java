package studio.stancebook.problem;

/** A write to an existing thing came without saying which version it was made from. */
public class PreconditionRequired extends Refusal {

    public PreconditionRequired(String message) {
        super(ProblemType.PRECONDITION_REQUIRED, message);
    }
}
