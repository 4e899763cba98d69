package studio.stancebook.account.session;

import java.security.SecureRandom;
import java.util.Base64;
import org.springframework.session.SessionIdGenerator;

/**
 * Session ids of 216 random bits: 36 characters, as many as the column of the table takes.
 *
 * <p>Source: OWASP ASVS 5.0.0, 7.2.3 asks for 128 bits at least; the random UUID that Spring Session takes by itself has 122
 * (RFC 9562, section 5.4).
 */
final class RandomSessionIds implements SessionIdGenerator {

    private static final int BYTES = 27;
    private static final SecureRandom RANDOM = new SecureRandom();

    @Override
    public String generate() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
