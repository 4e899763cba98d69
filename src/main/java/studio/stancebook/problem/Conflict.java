package studio.stancebook.problem;

/** What is asked for contradicts what is stored, such as a name that is taken. */
public class Conflict extends Refusal {

    public Conflict(String message) {
        super(ProblemType.CONFLICT, message);
    }
}
