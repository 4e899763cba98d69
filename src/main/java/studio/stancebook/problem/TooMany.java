package studio.stancebook.problem;

/** More requests than allowed in the time. */
public class TooMany extends Refusal {

    public TooMany(String message) {
        super(ProblemType.TOO_MANY, message);
    }
}
