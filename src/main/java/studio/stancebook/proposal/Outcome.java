package studio.stancebook.proposal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be decided on a revision, in the words of the review sheet. */
public enum Outcome {
    /** Accept it as it is. */
    ACCEPT(Stage.AGREED),
    /** Revise it and show it again. */
    REVISE(Stage.DRAFT),
    /** Stop. */
    STOP(Stage.SHELVED);

    private final Stage stage;

    Outcome(Stage stage) {
        this.stage = stage;
    }

    public static Optional<Outcome> ofKey(String key) {
        return Arrays.stream(values()).filter(one -> one.key().equals(key)).findFirst();
    }

    /** The stage that a proposal comes to by it. */
    public Stage stage() {
        return stage;
    }

    /** The name in forms and messages, such as {@code accept}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
