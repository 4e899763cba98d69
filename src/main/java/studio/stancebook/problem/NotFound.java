package studio.stancebook.problem;

/** There is no such thing, or the person may not know that there is. */
public class NotFound extends Refusal {

    /**
     * @param what the kind of thing, such as {@code segment}
     * @param id what it was looked up by
     */
    public NotFound(String what, Object id) {
        super(ProblemType.NOT_FOUND, "There is no " + what + " " + id + ".");
    }
}
