package studio.stancebook.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import studio.stancebook.PdfChecker;

class VectorPageFilesTest {

    private static final String TITLE = "Größe <5 & \u0000 \"Žluťoučký\" 車";

    private final Locale before = Locale.getDefault();

    private static final VectorPage PAGE = new VectorPage(
            TITLE,
            "A square of 100.5 mm",
            210,
            148,
            null,
            List.of(
                    new Group(
                            "square",
                            Group.StructureRole.FIGURE,
                            "A square",
                            List.of(new Mark.Trace(
                                    Path.rectangle(20, 20, 100.5, 100.5), Ink.line("#ff0000", 1, 3.5, 1.25)))),
                    Group.of(
                            "title",
                            Group.StructureRole.TITLE,
                            List.of(new Mark.Writing(20, 140, Anchor.START, 5, true, "#000000", "#ffffff", TITLE)))));

    @AfterEach
    void restoreTheLocale() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG", "en-US"})
    void svgIsValidXmlOfTheSizeOfThePaperUnderAnyLocale(String locale) throws Exception {
        Locale.setDefault(Locale.forLanguageTag(locale));

        String svg = SvgWriter.of(PAGE);

        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertThat(document.getDocumentElement().getAttribute("width")).isEqualTo("210mm");
        assertThat(document.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 210 148");
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Größe <5 &  \"Žluťoučký\" 車");
        assertThat(svg).contains("d=\"M20 20H120.5V120.5H20Z\"", "stroke-dasharray=\"3.5 1.25\"");
    }

    @Test
    void pdfHasThePaperItsFaceEmbeddedAndTextToSelect() throws Exception {
        Locale.setDefault(Locale.GERMANY);
        try (PDDocument document = Loader.loadPDF(PdfWriter.of(PAGE))) {
            PDRectangle paper = document.getPage(0).getMediaBox();
            assertThat(paper.getWidth()).isCloseTo(210 * 72 / 25.4f, within(0.01f));
            assertThat(paper.getHeight()).isCloseTo(148 * 72 / 25.4f, within(0.01f));
            assertThat(new PDFTextStripper().getText(document).strip())
                    .as("what no face has is a question mark")
                    .isEqualTo("Größe <5 &  \"Žluťoučký\" ?");
            for (COSName name : document.getPage(0).getResources().getFontNames()) {
                assertThat(document.getPage(0).getResources().getFont(name).isEmbedded())
                        .isTrue();
            }
        }
    }

    @Test
    void pdfKeepsToTheStandardForAccess() {
        assertThat(PdfChecker.faults(PdfWriter.of(PAGE))).isEmpty();
        assertThat(PdfChecker.faults(PdfWriter.of(PAGE.on("#ffffff")))).isEmpty();
    }

    /** A figure without a description is a fault by ISO 14289-1, 7.3. */
    @Test
    void aFigureThatSaysNothingIsFound() {
        Group dumb = Group.of(
                "square", Group.StructureRole.FIGURE, PAGE.groups().get(0).marks());

        assertThat(PdfChecker.faults(PdfWriter.of(new VectorPage("Dumb", "", 210, 148, null, List.of(dumb)))))
                .isNotEmpty()
                .allMatch(fault -> fault.startsWith("7.3"));
    }

    @Test
    void cellsMakeATableWithHeaders() throws Exception {
        List<Group> cells = new ArrayList<>();
        cells.add(cell(Group.StructureRole.TITLE, 10, "Before"));
        cells.add(cell(Group.StructureRole.COLUMN_HEADER, 20, "Measure"));
        cells.add(cell(Group.StructureRole.COLUMN_HEADER, 60, "Value"));
        cells.add(cell(Group.StructureRole.ROW_HEADER, 20, "Wheelbase"));
        cells.add(cell(Group.StructureRole.CELL, 60, "3.4"));
        cells.add(cell(Group.StructureRole.ROW_HEADER, 20, "Height"));
        cells.add(new Group(
                "strip",
                Group.StructureRole.CELL_FIGURE,
                "A strip",
                PAGE.groups().get(0).marks()));
        cells.add(cell(Group.StructureRole.PARAGRAPH, 10, "After"));
        byte[] file = PdfWriter.of(new VectorPage("Table", "", 210, 148, null, cells));

        assertThat(PdfChecker.faults(file)).isEmpty();
        try (PDDocument document = Loader.loadPDF(file)) {
            PDStructureElement whole = (PDStructureElement) document.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getKids()
                    .get(0);
            assertThat(kids(whole))
                    .extracting(PDStructureElement::getStructureType)
                    .containsExactly("H1", "Table", "P");
            assertThat(kids(kids(whole).get(1)))
                    .extracting(row -> kids(row).stream()
                            .map(PDStructureElement::getStructureType)
                            .toList())
                    .containsExactly(List.of("TH", "TH"), List.of("TH", "TD"), List.of("TH", "TD"));
        }
    }

    private static Group cell(Group.StructureRole role, double x, String text) {
        return Group.of("cell", role, List.of(new Mark.Writing(x, 20, Anchor.START, 3, false, "#000000", null, text)));
    }

    private static List<PDStructureElement> kids(PDStructureElement element) {
        return element.getKids().stream().map(PDStructureElement.class::cast).toList();
    }

    @Test
    void pdfIsTaggedInReadingOrder() throws Exception {
        try (PDDocument document = Loader.loadPDF(PdfWriter.of(PAGE))) {
            PDStructureElement whole = (PDStructureElement) document.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getKids()
                    .get(0);
            List<PDStructureElement> parts =
                    whole.getKids().stream().map(PDStructureElement.class::cast).toList();
            assertThat(parts).extracting(PDStructureElement::getStructureType).containsExactly("Figure", "H1");
            assertThat(parts.get(0).getAlternateDescription()).isEqualTo("A square");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }

    @Test
    void pngShowsTheSameAsThePdf() throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.of(PAGE, 840)));

        assertThat(image.getWidth()).isEqualTo(840);
        assertThat(image.getHeight()).isBetween(591, 593);
        assertThat(image.getRGB(20 * 4, 20 * 4 + 4) & 0xffffff)
                .as("the red line")
                .isEqualTo(0xff0000);
        assertThat(image.getRGB(70 * 4, 70 * 4) & 0xffffff).as("inside").isEqualTo(0xffffff);
    }

    /** Pangrams and place names, from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Příliš žluťoučký kůň úpěl ďábelské ódy",
                "Ξεσκεπάζω την ψυχοφθόρα βδελυγμία",
                "Съешь же ещё этих мягких французских булок",
                "Łódź, Tiếng Việt, Şişli, Őrség",
                "Hội An → 3½ × 2 ≈ 7"
            })
    void lettersOfEuropeAreWrittenAsTheyAre(String text) throws Exception {
        for (boolean strong : new boolean[] {false, true}) {
            Mark.Writing words = new Mark.Writing(10, 20, Anchor.START, 4, strong, "#000000", null, text);
            VectorPage page = new VectorPage(
                    text,
                    "",
                    210,
                    148,
                    null,
                    List.of(Group.of("words", Group.StructureRole.PARAGRAPH, List.of(words))));
            byte[] file = PdfWriter.of(page);

            try (PDDocument document = Loader.loadPDF(file)) {
                assertThat(new PDFTextStripper().getText(document).strip()).isEqualTo(text);
            }
            assertThat(PdfChecker.faults(file)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {319, 4097, 0, -5})
    void pngHasAWidthThatTheServerCanBear(int width) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PngWriter.of(PAGE, width))
                .withMessageContaining(String.valueOf(width));
    }
}
