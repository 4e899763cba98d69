package studio.stancebook.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The faces that the program brings: the studio's own in two weights, and one with more letters that stands in. */
enum Face {
    REGULAR("/paper/overpass-400.ttf"),
    STRONG("/paper/overpass-600.ttf"),
    STAND_IN("/paper/dejavu-sans.ttf");

    /** Stands for a character that no face has. */
    private static final String UNKNOWN = "?";

    private final String resource;
    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    Face(String resource) {
        this.resource = resource;
        try (InputStream file = file()) {
            this.font = new TTFParser().parse(new RandomAccessReadBuffer(file.readAllBytes()));
            this.glyphs = font.getUnicodeCmapLookup();
            this.unitsPerEm = font.getUnitsPerEm();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The file of the face, to be closed by the caller. */
    final InputStream file() {
        InputStream file = Face.class.getResourceAsStream(resource);
        if (file == null) {
            throw new IllegalStateException("The program is incomplete: it lacks " + resource);
        }
        return file;
    }

    /** A piece of text that one face has all the letters of. */
    record Run(Face face, String text) {

        /** Width in em. */
        double widthEm() {
            return text.codePoints().mapToDouble(face::advance).sum();
        }
    }

    /**
     * A text as it can be set: each character in the studio's face where that has it, else in the one that stands in, else
     * as the letter without its marks, else as a question mark.
     */
    static List<Run> runs(String text, boolean strong) {
        Face own = strong ? STRONG : REGULAR;
        List<Run> runs = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        Face face = own;
        for (int c : text.codePoints().toArray()) {
            String known = own.has(c) || STAND_IN.has(c) ? Character.toString(c) : bare(c, own);
            Face next = own.hasAll(known) ? own : STAND_IN;
            if (next != face && !piece.isEmpty()) {
                runs.add(new Run(face, piece.toString()));
                piece.setLength(0);
            }
            face = next;
            piece.append(known);
        }
        runs.add(new Run(face, piece.toString()));
        return runs;
    }

    private static String bare(int character, Face own) {
        String letter = Normalizer.normalize(Character.toString(character), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "");
        boolean known = !letter.isEmpty() && (own.hasAll(letter) || STAND_IN.hasAll(letter));
        return known ? letter : UNKNOWN;
    }

    private boolean hasAll(String text) {
        return text.codePoints().allMatch(this::has);
    }

    private boolean has(int character) {
        return glyphs.getGlyphId(character) != 0;
    }

    private synchronized double advance(int character) {
        try {
            return font.getAdvanceWidth(glyphs.getGlyphId(character)) / unitsPerEm;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
