package studio.stancebook.problem;

/** More was sent than is accepted. */
public class TooLarge extends Refusal {

    public TooLarge(String message) {
        super(ProblemType.TOO_LARGE, message);
    }
}
