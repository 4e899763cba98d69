package studio.stancebook.underlay;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import studio.stancebook.paper.PathReader;

/** The bounds of every path of a file, in mm from the upper left corner of the paper. */
final class Boxes {

    private static final double MM_A_POINT = 25.4 / 72;

    private Boxes() {}

    /** Read back from the content stream by the PDF library's own engine. */
    static List<Rectangle2D> ofPdf(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            Reader reader = new Reader(document.getPage(0));
            reader.processPage(document.getPage(0));
            return reader.boxes;
        }
    }

    /** Read back from the path data of an XML document whose unit is said to be a mm. */
    static List<Rectangle2D> ofSvg(String svg) throws Exception {
        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        String[] view = root.getAttribute("viewBox").split(" ");
        if (!root.getAttribute("width").equals(view[2] + "mm")
                || !root.getAttribute("height").equals(view[3] + "mm")) {
            throw new IllegalArgumentException("The unit of the drawing is not a mm");
        }
        List<Rectangle2D> boxes = new ArrayList<>();
        NodeList paths = root.getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            boxes.add(PathReader.shape(((Element) paths.item(i)).getAttribute("d"))
                    .getBounds2D());
        }
        return boxes;
    }

    private static final class Reader extends PDFGraphicsStreamEngine {

        private final List<Rectangle2D> boxes = new ArrayList<>();
        private final double heightPt;
        private Path2D path = new Path2D.Double();

        Reader(PDPage page) {
            super(page);
            this.heightPt = page.getMediaBox().getHeight();
        }

        private void end() {
            Rectangle2D b = path.getBounds2D();
            boxes.add(new Rectangle2D.Double(
                    b.getX() * MM_A_POINT,
                    (heightPt - b.getMaxY()) * MM_A_POINT,
                    b.getWidth() * MM_A_POINT,
                    b.getHeight() * MM_A_POINT));
            path = new Path2D.Double();
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            path.moveTo(p0.getX(), p0.getY());
            path.lineTo(p1.getX(), p1.getY());
            path.lineTo(p2.getX(), p2.getY());
            path.lineTo(p3.getX(), p3.getY());
            path.closePath();
        }

        @Override
        public void drawImage(PDImage image) {
            throw new IllegalStateException("An underlay is lines alone");
        }

        @Override
        public void clip(int rule) {}

        @Override
        public void moveTo(float x, float y) {
            path.moveTo(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            path.lineTo(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return path.getCurrentPoint();
        }

        @Override
        public void closePath() {
            path.closePath();
        }

        @Override
        public void endPath() {
            path = new Path2D.Double();
        }

        @Override
        public void strokePath() {
            end();
        }

        @Override
        public void fillPath(int rule) {
            end();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            end();
        }

        @Override
        public void shadingFill(COSName name) {
            throw new IllegalStateException("An underlay has no shading");
        }
    }
}
