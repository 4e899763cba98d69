package studio.stancebook.account.internal;

import java.security.SecureRandom;
import java.util.Base64;

/** Random text that nobody can guess. */
final class Secret {

    private static final int BYTES = 32;
    private static final int PARTS = 4;
    private static final String CONSONANTS = "bdfgklmnprstvz";
    private static final String VOWELS = "aeiou";
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    /** A key for a link: 256 bits. */
    static String key() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** A token: 256 bits, marked as ours so that it is recognised where it should not be. */
    static String token() {
        return "sbk_" + key();
    }

    /** A password that is easily typed, such as {@code tamo-keri-pulo-dasi}: four parts of 70 x 70, 49 bits in all. */
    static String readable() {
        StringBuilder password = new StringBuilder();
        for (int part = 0; part < PARTS; part++) {
            password.append(part == 0 ? "" : "-").append(syllable()).append(syllable());
        }
        return password.toString();
    }

    private static String syllable() {
        return "" + CONSONANTS.charAt(RANDOM.nextInt(CONSONANTS.length()))
                + VOWELS.charAt(RANDOM.nextInt(VOWELS.length()));
    }
}
