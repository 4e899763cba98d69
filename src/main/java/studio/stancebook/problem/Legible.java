package studio.stancebook.problem;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which characters a name, a reason or a note may have: any that is one, of any script. Not control characters; not the
 * embeddings, overrides and isolates of direction, which make a text read as what it is not and reach into what stands
 * beside it (Unicode UAX #9, 2.1 to 2.4; UTR #36, 3.2); not halves of surrogate pairs and noncharacters, which neither XML
 * nor every database can hold. The plain marks of direction U+200E, U+200F and U+061C turn nothing else and are kept.
 *
 * <p>A line, which tells things apart, has no invisible characters besides: two names that look the same would be two. The
 * joiners U+200C and U+200D are taken where they show, between letters of scripts that join and within emoji.
 */
public final class Legible {

    private static final int ZWNJ = 0x200C;
    private static final int ZWJ = 0x200D;

    private Legible() {}

    /** Whether a text can stand on one line. */
    public static boolean isLine(String text) {
        int[] points = text.codePoints().toArray();
        return IntStream.range(0, points.length)
                .allMatch(i -> isCharacter(points[i]) && (!isInvisible(points[i]) || isJoined(points, i)));
    }

    /** Whether a text of several lines, which may have tabs, can be shown. */
    public static boolean isText(String text) {
        return text.codePoints().allMatch(c -> c == '\n' || c == '\r' || c == '\t' || isCharacter(c));
    }

    /**
     * What is wrong with a text on one line that must not be blank.
     *
     * @param what it is, as in "Write a reason."
     */
    public static Optional<String> faultOfLine(String what, String text, int most) {
        return text.isBlank()
                ? Optional.of("Write " + what + ".")
                : fault(what, text, most, isLine(text), "on one line, without hidden characters");
    }

    /** What is wrong with a text of several lines that may be empty. */
    public static Optional<String> faultOfText(String what, String text, int most) {
        return fault(what, text, most, isText(text), "without hidden characters");
    }

    private static Optional<String> fault(String what, String text, int most, boolean legible, String how) {
        String begin = Character.toUpperCase(what.charAt(0)) + what.substring(1);
        if (text.length() > most) {
            return Optional.of(begin + " has at most " + most + " characters, not " + text.length() + ".");
        }
        return legible ? Optional.empty() : Optional.of(begin + " is written " + how + ": \"" + brief(text) + "\".");
    }

    private static String brief(String text) {
        String line = shown(text);
        return line.length() <= 40 ? line : line.substring(0, 40) + "…";
    }

    /** A text as it may be repeated to whoever sent it, with {@code ?} for every character that is none. */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().map(c -> isCharacter(c) && !isInvisible(c) ? c : '?').forEach(shown::appendCodePoint);
        return shown.toString();
    }

    private static boolean isCharacter(int c) {
        return !Character.isISOControl(c) && !breaksLine(c) && !turnsDirection(c) && !isHalf(c) && !isNone(c);
    }

    private static boolean isInvisible(int c) {
        return isUnseenFormat(c) || isFiller(c);
    }

    /** Of no width or as wide as a blank, though they are letters, marks and a symbol (The Unicode Standard, 5.21 and 21.1). */
    private static boolean isFiller(int c) {
        return switch (c) {
            case 0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x2800, 0x3164, 0xFFA0 -> true;
            default -> false;
        };
    }

    /** Format characters (Cf) that show nothing: all but marks of direction and the marks of Arabic and Syriac numbers. */
    private static boolean isUnseenFormat(int c) {
        boolean direction = c == 0x200E || c == 0x200F || c == 0x061C;
        boolean shown = c >= 0x0600 && c <= 0x0605
                || c == 0x06DD
                || c == 0x070F
                || c == 0x0890
                || c == 0x0891
                || c == 0x08E2
                || c == 0x110BD
                || c == 0x110CD;
        return Character.getType(c) == Character.FORMAT && !direction && !shown;
    }

    /** Whether a joiner stands between two letters of scripts that join, or between two parts of an emoji. */
    private static boolean isJoined(int[] points, int i) {
        boolean joiner = points[i] == ZWNJ || points[i] == ZWJ;
        return joiner && i > 0 && i + 1 < points.length && joins(points[i - 1]) && joins(points[i + 1]);
    }

    private static boolean joins(int c) {
        return switch (Character.getType(c)) {
            case Character.OTHER_LETTER,
                    Character.NON_SPACING_MARK,
                    Character.COMBINING_SPACING_MARK,
                    Character.OTHER_SYMBOL,
                    Character.MODIFIER_SYMBOL -> c > 0x7F;
            default -> false;
        };
    }

    private static boolean breaksLine(int c) {
        return c == 0x2028 || c == 0x2029;
    }

    private static boolean turnsDirection(int c) {
        return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }

    private static boolean isHalf(int c) {
        return c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    }

    /** Noncharacters: the last two of each plane, and 32 more (The Unicode Standard, 23.7). */
    private static boolean isNone(int c) {
        return (c & 0xFFFE) == 0xFFFE || c >= 0xFDD0 && c <= 0xFDEF;
    }
}
