package studio.stancebook.paper;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.Semaphore;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.Malformed;

/** Writes a page as a picture of dots, the same as its PDF shows. */
public final class PngWriter {

    /** Narrowest picture, px. */
    private static final int LEAST_WIDTH_PX = 320;

    /** Widest picture, px. */
    private static final int MOST_WIDTH_PX = 4096;

    /** A picture of the greatest size takes some 50 MB while it is made. */
    private static final Semaphore TURNS = new Semaphore(2);

    private PngWriter() {}

    /**
     * The width that a request asks for, px.
     *
     * @param asked null for the usual one
     * @throws Malformed if a picture may not have this width
     */
    public static int widthPx(@Nullable Integer asked, int usual) {
        int width = asked == null ? usual : asked;
        if (!allowed(width)) {
            throw Malformed.ofField(
                    "width",
                    "A width is a whole number from " + LEAST_WIDTH_PX + " to " + MOST_WIDTH_PX + " px, not " + width
                            + ".");
        }
        return width;
    }

    private static boolean allowed(int widthPx) {
        return widthPx >= LEAST_WIDTH_PX && widthPx <= MOST_WIDTH_PX;
    }

    /**
     * The whole file.
     *
     * @param widthPx from {@value #LEAST_WIDTH_PX} to {@value #MOST_WIDTH_PX}
     * @throws IllegalArgumentException if the width is another
     */
    public static byte[] of(VectorPage page, int widthPx) {
        if (!allowed(widthPx)) {
            throw new IllegalArgumentException(
                    "A picture is " + LEAST_WIDTH_PX + " to " + MOST_WIDTH_PX + " px wide, not " + widthPx);
        }
        TURNS.acquireUninterruptibly();
        try (PDDocument document = Loader.loadPDF(PdfWriter.of(page))) {
            float pointsWide = document.getPage(0).getMediaBox().getWidth();
            BufferedImage image = new PDFRenderer(document).renderImage(0, widthPx / pointsWide, ImageType.RGB);
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            ImageIO.write(image, "png", file);
            return file.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            TURNS.release();
        }
    }
}
