package studio.stancebook.problem;

/**
 * The server cannot start as things are. It is told on the console, without anything internal, and the process ends with an
 * exit code other than 0.
 */
public final class CannotStart extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String whatToDo;

    /**
     * @param whatIsWrong a sentence for whoever starts the server
     * @param whatToDo what they can do about it
     */
    public CannotStart(String whatIsWrong, String whatToDo) {
        super(whatIsWrong);
        this.whatToDo = whatToDo;
    }

    /** What whoever starts the server can do about it. */
    public String whatToDo() {
        return whatToDo;
    }
}
