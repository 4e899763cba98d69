package studio.stancebook.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How wide words are in the studio's face, to place them before they are written. */
public final class LetterWidths {

    private static final LetterWidths REGULAR = new LetterWidths("/paper/overpass-400.ttf");
    private static final LetterWidths STRONG = new LetterWidths("/paper/overpass-600.ttf");

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    private LetterWidths(String resource) {
        try (InputStream file = LetterWidths.class.getResourceAsStream(resource)) {
            if (file == null) {
                throw new IllegalStateException("The program is incomplete: it lacks " + resource);
            }
            this.font = new TTFParser().parse(new RandomAccessReadBuffer(file.readAllBytes()));
            this.glyphs = font.getUnicodeCmapLookup();
            this.unitsPerEm = font.getUnitsPerEm();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Width in em; a character that the face does not have counts as the widest. */
    public static double em(String text, boolean strong) {
        return (strong ? STRONG : REGULAR).widthEm(text);
    }

    private synchronized double widthEm(String text) {
        return text.codePoints().mapToDouble(this::advance).sum();
    }

    private double advance(int character) {
        int glyph = glyphs.getGlyphId(character);
        try {
            return glyph == 0 ? 1 : font.getAdvanceWidth(glyph) / unitsPerEm;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
