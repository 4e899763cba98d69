package studio.stancebook.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Places words so that none lies over another. Widths are estimated, on the safe side, from the advance widths of a
 * common sans serif: digits and lower case 0.56 em on average, capitals 0.70, narrow signs 0.30, ideographs 1.
 */
final class Lettering {

    private static final String NARROW = " .,:;'|!()[]ijlt·-";
    private static final String WIDE = "mwMW%@—–";
    private static final double ASCENT = 0.78;
    private static final double DESCENT = 0.24;

    private final double em;
    private final List<Box> taken = new ArrayList<>();

    Lettering(double emMm) {
        this.em = emMm;
    }

    /** A rectangle, mm, y downwards. */
    record Box(double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    /** The text without characters that XML 1.0 does not allow. */
    static String writable(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().filter(Lettering::allowed).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean allowed(int c) {
        boolean control = c < 0x20 && c != 0x9 && c != 0xA && c != 0xD;
        return !control && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFE && c != 0xFFFF;
    }

    /** Estimated width in em. */
    static double widthEm(String text) {
        return text.codePoints().mapToDouble(Lettering::advance).sum();
    }

    private static double advance(int c) {
        if (NARROW.indexOf(c) >= 0) {
            return 0.31;
        }
        if (WIDE.indexOf(c) >= 0) {
            return 0.92;
        }
        if (c >= 0x1100 && Character.isLetter(c)) {
            return 1;
        }
        return Character.isUpperCase(c) ? 0.72 : 0.58;
    }

    double widthOf(String text) {
        return widthEm(text) * em;
    }

    /** The box of words set at the full size of the sheet. */
    Box boxOf(Words words) {
        double width = widthOf(words.text());
        double left = switch (words.anchor()) {
            case "start" -> words.x();
            case "end" -> words.x() - width;
            default -> words.x() - width / 2;
        };
        return new Box(left, words.y() - ASCENT * em, left + width, words.y() + DESCENT * em);
    }

    boolean free(Words words) {
        Box box = boxOf(words);
        return taken.stream().noneMatch(box::meets);
    }

    /** Takes the place of these words; false, and nothing taken, where others are already. */
    boolean take(Words words) {
        boolean free = free(words);
        if (free) {
            taken.add(boxOf(words));
        }
        return free;
    }

    /** At most that many characters, the last one then an ellipsis. */
    static String shortened(String text, int most) {
        String stripped = text.strip();
        int length = stripped.codePointCount(0, stripped.length());
        return length <= most
                ? stripped
                : stripped.substring(0, stripped.offsetByCodePoints(0, most - 1))
                                .strip() + "…";
    }
}
