package studio.stancebook.access;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a person is in the studio; exactly one each. What it allows is a {@link Permission}. */
public enum Role {
    /** Runs the studio: people, segments, bands, decisions. */
    LEAD,
    /** Records packages and works on proposals. */
    DESIGNER,
    /** Sets and marks exercises. */
    TUTOR,
    /** Does exercises and makes own proposals. */
    LEARNER,
    /** Reads everything, changes nothing but their own account. */
    VIEWER;

    /** The role with a key, in lower case and without surrounding space. */
    public static Optional<Role> ofKey(String key) {
        return Arrays.stream(values())
                .filter(role -> role.key().equals(key.strip()))
                .findFirst();
    }

    /** All keys, for a sentence that says what is accepted. */
    public static String keys() {
        return Arrays.stream(values()).map(Role::key).collect(Collectors.joining(", "));
    }

    /** The name in JSON and in forms. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
