package studio.stancebook.activity.internal;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Texts as a line can hold them. */
final class RecordText {

    /** Longer values are cut. */
    static final int LONGEST_VALUE = 1000;

    private static final int KEPT_OF_LONG_VALUE = 500;

    private RecordText() {}

    /** One line of text, cut if need be. */
    static String words(String text, int longest) {
        String kept = storable(text).replace('\n', ' ');
        return kept.length() <= longest ? kept : start(kept, longest - 1) + "…";
    }

    /** A value; of one that is too long the beginning, its length and its SHA-256 over UTF-8. */
    static String value(String text) {
        String kept = storable(text);
        return kept.length() <= LONGEST_VALUE
                ? kept
                : start(kept, KEPT_OF_LONG_VALUE) + "… (" + kept.length() + " characters, SHA-256 " + digest(kept)
                        + ")";
    }

    private static String digest(String text) {
        return HexFormat.of().formatHex(LineHash.sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Never ends in half a character. */
    private static String start(String text, int length) {
        return text.substring(0, Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length);
    }

    /** Without what not every database or encoding gives back as it was: controls but line breaks, and halves of characters. */
    private static String storable(String text) {
        return text.codePoints()
                .map(c -> isKept(c) ? c : 0xFFFD)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isKept(int codePoint) {
        return codePoint == '\n'
                || !(Character.isISOControl(codePoint) || Character.getType(codePoint) == Character.SURROGATE);
    }
}
