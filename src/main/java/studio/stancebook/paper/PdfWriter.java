package studio.stancebook.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;

/** Writes a drawing as a PDF of one page of the size of its paper: vectors, selectable text, its face embedded, tagged. */
public final class PdfWriter {

    static final float POINTS_A_MM = 72 / 25.4f;

    private final VectorPage page;
    private final PDPageContentStream content;
    private final Faces faces;
    private final List<PDOptionalContentGroup> layers = new ArrayList<>();

    private PdfWriter(VectorPage page, PDPageContentStream content, Faces faces) {
        this.page = page;
        this.content = content;
        this.faces = faces;
    }

    /** The whole file. */
    public static byte[] of(VectorPage page) {
        try (PDDocument document = document(page)) {
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            document.save(file);
            return file.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static PDDocument document(VectorPage page) throws IOException {
        PDDocument document = new PDDocument();
        PDPage sheet = new PDPage(new PDRectangle(points(page.widthMm()), points(page.heightMm())));
        document.addPage(sheet);
        document.setVersion(1.7f);
        document.getDocumentInformation().setTitle(page.title());
        document.getDocumentInformation().setSubject(page.description());
        document.getDocumentCatalog().setMetadata(Metadata.of(page, document));
        Tags tags = new Tags(sheet);
        try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
            PdfWriter writer = new PdfWriter(page, content, new Faces(document));
            writer.write(tags);
            layers(writer.layers, document);
        }
        tags.writeTo(document);
        return document;
    }

    /** What a reader can switch off, ISO 32000-1, 8.11; visible at first. */
    private static void layers(List<PDOptionalContentGroup> layers, PDDocument document) {
        if (!layers.isEmpty()) {
            PDOptionalContentProperties properties = new PDOptionalContentProperties();
            layers.forEach(properties::addGroup);
            document.getDocumentCatalog().setOCProperties(properties);
        }
    }

    private static float points(double mm) {
        return (float) (mm * POINTS_A_MM);
    }

    /** From here on one unit is a mm and y runs downwards, as on the page. */
    private void write(Tags tags) throws IOException {
        content.transform(new Matrix(POINTS_A_MM, 0, 0, -POINTS_A_MM, 0, points(page.heightMm())));
        content.setLineJoinStyle(BasicStroke.JOIN_ROUND);
        if (page.ground() != null) {
            content.beginMarkedContent(COSName.ARTIFACT);
            Path all = Path.rectangle(0, 0, page.widthMm(), page.heightMm());
            trace(new Mark.Trace(all, Ink.wash(page.ground(), 1)));
            content.endMarkedContent();
        }
        for (Group group : page.groups()) {
            group(group, tags);
        }
    }

    private void group(Group group, Tags tags) throws IOException {
        if (group.layer() == null) {
            tagged(group, tags);
        } else {
            PDOptionalContentGroup layer = new PDOptionalContentGroup(group.layer());
            layers.add(layer);
            content.beginMarkedContent(COSName.OC, layer);
            tagged(group, tags);
            content.endMarkedContent();
        }
    }

    private void tagged(Group group, Tags tags) throws IOException {
        if (group.role() == Group.StructureRole.ARTIFACT) {
            content.beginMarkedContent(COSName.ARTIFACT);
        } else {
            content.beginMarkedContent(COSName.getPDFName(group.role().tag()), tags.add(group));
        }
        for (Mark mark : group.marks()) {
            if (mark instanceof Mark.Trace trace) {
                trace(trace);
            } else if (mark instanceof Mark.Writing writing) {
                writing(writing);
            }
        }
        content.endMarkedContent();
    }

    private void trace(Mark.Trace trace) throws IOException {
        Ink ink = trace.ink();
        content.saveGraphicsState();
        if (ink.fill() != null) {
            content.setNonStrokingColor(Color.decode(ink.fill()));
            if (ink.fillOpacity() < 1) {
                PDExtendedGraphicsState state = new PDExtendedGraphicsState();
                state.setNonStrokingAlphaConstant((float) ink.fillOpacity());
                content.setGraphicsStateParameters(state);
            }
        }
        if (ink.stroke() != null) {
            content.setStrokingColor(Color.decode(ink.stroke()));
            content.setLineWidth((float) ink.widthMm());
            content.setLineDashPattern(dashes(ink), 0);
        }
        for (Step step : trace.path().curved().steps()) {
            add(step);
        }
        paint(ink);
        content.restoreGraphicsState();
    }

    private static float[] dashes(Ink ink) {
        float[] lengths = new float[ink.dashesMm().size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = ink.dashesMm().get(i).floatValue();
        }
        return lengths;
    }

    private void add(Step step) throws IOException {
        if (step instanceof Step.MoveTo move) {
            content.moveTo((float) move.x(), (float) move.y());
        } else if (step instanceof Step.LineTo line) {
            content.lineTo((float) line.x(), (float) line.y());
        } else if (step instanceof Step.CurveTo c) {
            content.curveTo(
                    (float) c.x1(), (float) c.y1(), (float) c.x2(), (float) c.y2(), (float) c.x(), (float) c.y());
        } else {
            content.closePath();
        }
    }

    private void paint(Ink ink) throws IOException {
        if (ink.fill() != null && ink.stroke() != null) {
            content.fillAndStroke();
        } else if (ink.fill() != null) {
            content.fill();
        } else {
            content.stroke();
        }
    }

    private void writing(Mark.Writing writing) throws IOException {
        double width = LetterWidths.em(writing.text(), writing.strong()) * writing.sizeMm();
        if (writing.ground() != null) {
            trace(new Mark.Trace(writing.cover(width), Ink.wash(writing.ground(), 1)));
        }
        content.beginText();
        content.setNonStrokingColor(Color.decode(writing.colour()));
        content.setTextMatrix(new Matrix(1, 0, 0, -1, (float) writing.left(width), (float) writing.yMm()));
        for (Face.Run run : Face.runs(writing.text(), writing.strong())) {
            content.setFont(faces.of(run.face()), (float) writing.sizeMm());
            content.showText(run.text());
        }
        content.endText();
    }
}
