package studio.stancebook.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Places words so that none lies over another. Widths are those of the page's own face in its strong weight or of a bold
 * Helvetica, whichever is greater, as a browser measures them; letters outside ASCII are taken as wide, ideographs as 1 em.
 */
public final class Lettering {

    /** Advance widths of the characters from space to tilde, in thousandths of an em. */
    private static final int[] ADVANCES = {
        278, 333, 474, 696, 599, 889, 722, 238, 363, 363, 546, 639, 278, 410, 278, 512, 653, 556, 612,
        601, 636, 614, 609, 556, 623, 609, 333, 333, 639, 639, 639, 611, 975, 722, 722, 722, 722, 667,
        611, 778, 722, 292, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 672, 944, 667,
        670, 643, 387, 512, 387, 639, 556, 333, 556, 611, 556, 611, 556, 352, 611, 611, 278, 278, 556,
        281, 889, 611, 611, 611, 611, 408, 556, 388, 611, 556, 778, 557, 556, 531, 389, 291, 389, 639
    };

    private static final char MINUS = '\u2212';
    private static final double ASCENT = 0.78;
    private static final double DESCENT = 0.24;

    private final double em;
    private final List<Box> taken = new ArrayList<>();

    public Lettering(double emMm) {
        this.em = emMm;
    }

    /** A rectangle, mm, y downwards. */
    public record Box(double left, double top, double right, double bottom) {
        public boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    /** The text without characters that XML 1.0 does not allow. */
    public static String writable(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().filter(Lettering::allowed).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean allowed(int c) {
        boolean control = c < 0x20 && c != 0x9 && c != 0xA && c != 0xD;
        return !control && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFE && c != 0xFFFF;
    }

    /** A number as people read it: with a minus sign instead of the hyphen that machines read. */
    public static String read(String number) {
        return number.replace('-', MINUS);
    }

    /** Estimated width in em. */
    public static double widthEm(String text) {
        return text.codePoints().mapToDouble(Lettering::advance).sum();
    }

    private static double advance(int c) {
        if (c >= ' ' && c - ' ' < ADVANCES.length) {
            return ADVANCES[c - ' '] / 1000.0;
        }
        if (c == '°' || c == '·') {
            return 0.42;
        }
        if (c == MINUS) {
            return 0.66;
        }
        return c >= 0x1100 || c == '…' ? 1.02 : 0.9;
    }

    public double widthOf(String text) {
        return widthEm(text) * em;
    }

    /** The box of words set at the full size of the sheet. */
    public Box boxOf(TextLine words) {
        double width = widthOf(words.text());
        double left = switch (words.anchor()) {
            case "start" -> words.x();
            case "end" -> words.x() - width;
            default -> words.x() - width / 2;
        };
        return new Box(left, words.y() - ASCENT * em, left + width, words.y() + DESCENT * em);
    }

    boolean free(TextLine words) {
        Box box = boxOf(words);
        return taken.stream().noneMatch(box::meets);
    }

    /** Takes the place of these words; false, and nothing taken, where others are already. */
    public boolean take(TextLine words) {
        boolean free = free(words);
        if (free) {
            taken.add(boxOf(words));
        }
        return free;
    }

    /** At most that many characters, the last one then an ellipsis. */
    public static String shortened(String text, int most) {
        String stripped = text.strip();
        int length = stripped.codePointCount(0, stripped.length());
        return length <= most
                ? stripped
                : stripped.substring(0, stripped.offsetByCodePoints(0, most - 1))
                                .strip() + "…";
    }
}
