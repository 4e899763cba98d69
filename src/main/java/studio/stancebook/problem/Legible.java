package studio.stancebook.problem;

/**
 * Which characters a name, a reason or a note may have: any that is one, of any script. Not control characters; not the
 * embeddings, overrides and isolates of direction, which make a text read as what it is not and reach into what stands
 * beside it (Unicode UAX #9, 2.1 to 2.4; UTR #36, 3.2); not halves of surrogate pairs and noncharacters, which neither XML
 * nor every database can hold. The plain marks of direction U+200E, U+200F and U+061C turn nothing else and are kept.
 */
public final class Legible {

    private Legible() {}

    /** Whether a text can stand on one line. */
    public static boolean isLine(String text) {
        return text.codePoints().allMatch(Legible::isCharacter);
    }

    /** Whether a text of several lines, which may have tabs, can be shown. */
    public static boolean isText(String text) {
        return text.codePoints().allMatch(c -> c == '\n' || c == '\r' || c == '\t' || isCharacter(c));
    }

    /** A text as it may be repeated to whoever sent it, with {@code ?} for every character that is none. */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().map(c -> isCharacter(c) ? c : '?').forEach(shown::appendCodePoint);
        return shown.toString();
    }

    private static boolean isCharacter(int c) {
        return !Character.isISOControl(c) && !breaksLine(c) && !turnsDirection(c) && !isHalf(c) && !isNone(c);
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
