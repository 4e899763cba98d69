package studio.stancebook.paper;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces of a document, each embedded when the first word is set in it. */
final class Faces {

    private final PDDocument document;
    private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);

    Faces(PDDocument document) {
        this.document = document;
    }

    PDFont of(Face face) throws IOException {
        PDFont font = embedded.get(face);
        if (font == null) {
            try (InputStream file = face.file()) {
                font = PDType0Font.load(document, file, true);
            }
            embedded.put(face, font);
        }
        return font;
    }
}
