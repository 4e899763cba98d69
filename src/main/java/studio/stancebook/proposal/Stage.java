package studio.stancebook.proposal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;

/** How far a proposal has come. */
public enum Stage {
    /** Being worked on. */
    DRAFT,
    /** Laid before the studio. */
    FOR_REVIEW,
    /** To be built so; for the lead to say. */
    AGREED,
    /** Put away, and may come back. */
    SHELVED;

    public static Optional<Stage> ofKey(String key) {
        return Arrays.stream(values()).filter(stage -> stage.key().equals(key)).findFirst();
    }

    /** All keys, for a sentence that says what is accepted. */
    public static String keys() {
        return Arrays.stream(values()).map(Stage::key).collect(Collectors.joining(", "));
    }

    /** Whether somebody who may change a proposal may bring it to this stage, or away from it. */
    public boolean mayBeSetBy(SignedIn who) {
        return this != AGREED || who.may(Permission.AGREE_TO_PROPOSALS);
    }

    /** The name in JSON and in forms, such as {@code for-review}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
