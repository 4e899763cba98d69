package studio.stancebook;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The words of a PDF of one page, each line of text with the place that it takes, as the PDF library reads them back. */
public final class PdfWords {

    private static final double MM_A_POINT = 25.4 / 72;
    /** From the base line to the top of a capital and to the foot of a tail, in em: what Overpass takes, measured. */
    private static final double ASCENT_EM = 0.72;

    private static final double DESCENT_EM = 0.18;

    private PdfWords() {}

    /** A line of text, mm from the upper left corner of the paper. */
    public record Line(String text, double sizeMm, Rectangle2D box) {}

    public static List<Line> of(byte[] file) {
        try (PDDocument document = Loader.loadPDF(file)) {
            Reader reader = new Reader();
            reader.getText(document);
            return reader.lines;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Every two lines of which one lies over the other. */
    public static List<String> collisions(List<Line> lines) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                if (lines.get(i).box().intersects(lines.get(j).box())) {
                    found.add(lines.get(i).text() + " | " + lines.get(j).text());
                }
            }
        }
        return found;
    }

    private static final class Reader extends PDFTextStripper {

        private final List<Line> lines = new ArrayList<>();

        @Override
        protected void processTextPosition(TextPosition letter) {
            super.processTextPosition(letter);
            double size = letter.getYScale() * MM_A_POINT;
            double left = letter.getX() * MM_A_POINT;
            double base = letter.getY() * MM_A_POINT;
            Rectangle2D box = new Rectangle2D.Double(
                    left, base - ASCENT_EM * size, letter.getWidth() * MM_A_POINT, (ASCENT_EM + DESCENT_EM) * size);
            Line last = lines.isEmpty() ? null : lines.get(lines.size() - 1);
            boolean on = last != null
                    && Math.abs(last.box().getY() - box.getY()) < 0.01
                    && Math.abs(last.box().getMaxX() - left) < 0.05 * size;
            if (on && last != null) {
                Rectangle2D both = last.box().createUnion(box);
                lines.set(lines.size() - 1, new Line(last.text() + letter.getUnicode(), size, both));
            } else {
                lines.add(new Line(letter.getUnicode(), size, box));
            }
        }
    }
}
