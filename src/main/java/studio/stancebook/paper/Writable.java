package studio.stancebook.paper;

/** Text that every kind of file can hold. */
final class Writable {

    private Writable() {}

    /** The text without characters that XML 1.0 does not allow, with spaces for tabs and line ends. */
    static String text(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> c == '\t' || c == '\n' || c == '\r' ? ' ' : c)
                .filter(Writable::allowed)
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean allowed(int c) {
        return c >= 0x20 && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFE && c != 0xFFFF;
    }
}
