package studio.stancebook.problem;

/** The thing was changed by someone else since it was read. */
public class Stale extends Refusal {

    public Stale(String message) {
        super(ProblemType.STALE, message);
    }
}
