package studio.stancebook.paper;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The two weights of the studio's face, embedded in a document. */
final class Faces {

    /** Stands for a character that the face does not have. */
    private static final String UNKNOWN = "?";

    private final PDFont regular;
    private final PDFont strong;

    Faces(PDDocument document) throws IOException {
        this.regular = load(document, "/paper/overpass-400.ttf");
        this.strong = load(document, "/paper/overpass-600.ttf");
    }

    private static PDFont load(PDDocument document, String resource) throws IOException {
        try (InputStream file = Faces.class.getResourceAsStream(resource)) {
            if (file == null) {
                throw new IllegalStateException("The program is incomplete: it lacks " + resource);
            }
            return PDType0Font.load(document, file, true);
        }
    }

    PDFont of(Mark.Writing writing) {
        return writing.strong() ? strong : regular;
    }

    /** The text with a question mark for every character that the face does not have. */
    String known(Mark.Writing writing) {
        PDFont face = of(writing);
        StringBuilder known = new StringBuilder();
        writing.text()
                .codePoints()
                .mapToObj(Character::toString)
                .forEach(one -> known.append(has(face, one) ? one : UNKNOWN));
        return known.toString();
    }

    private static boolean has(PDFont face, String character) {
        try {
            face.encode(character);
            return true;
        } catch (IOException | IllegalArgumentException missing) {
            return false;
        }
    }

    /** Width of a text in mm. */
    double widthMm(Mark.Writing writing, String text) throws IOException {
        return of(writing).getStringWidth(text) / 1000 * writing.sizeMm();
    }
}
