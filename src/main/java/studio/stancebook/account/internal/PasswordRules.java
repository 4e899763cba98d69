package studio.stancebook.account.internal;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a password must be: length only, since length is what keeps a password from being guessed.
 *
 * <p>Source: NIST SP 800-63B, section on passwords, for length over composition rules (from memory); 12 characters is our
 * choice, 72 bytes is where bcrypt stops reading.
 */
public final class PasswordRules {

    public static final int MIN_CHARACTERS = 12;
    public static final int MAX_BYTES = 72;

    private PasswordRules() {}

    /** What is wrong with a password, without repeating it; empty if nothing is. */
    public static Optional<String> objection(@Nullable String password) {
        if (password == null || password.codePointCount(0, password.length()) < MIN_CHARACTERS) {
            return Optional.of("A password has at least " + MIN_CHARACTERS + " characters.");
        }
        if (password.getBytes(StandardCharsets.UTF_8).length > MAX_BYTES) {
            return Optional.of("A password has at most " + MAX_BYTES
                    + " bytes, which is as many plain letters; accented letters and symbols count for two to four.");
        }
        if (password.chars().anyMatch(Character::isISOControl)) {
            return Optional.of("A password has no control characters such as tabs or line ends.");
        }
        return Optional.empty();
    }
}
