package studio.stancebook.account.internal;

import java.security.SecureRandom;
import java.util.Base64;

/** Random text that nobody can guess: 256 bits each. */
final class Secret {

    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    /** A key for a link. */
    static String key() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** A token, marked as ours so that it is recognised where it should not be. */
    static String token() {
        return "sbk_" + key();
    }
}
