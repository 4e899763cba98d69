package studio.stancebook.underlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.PdfChecker;
import studio.stancebook.paper.PdfWriter;
import studio.stancebook.paper.SvgWriter;
import studio.stancebook.paper.VectorPage;
import studio.stancebook.problem.Impossible;

/**
 * What a ruler would find on the printed sheet: lengths of the vehicle over the scale, worked out by hand, read back from
 * the files to 0.1 mm on paper. A point is 1/72 in, ISO 32000-1, 8.3.2.3.
 */
class TrueToScaleTest {

    private static final double TENTH = 0.1;

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreTheLocale() {
        Locale.setDefault(before);
    }

    private static VectorPage page(PaperSize paper, Integer denominator) {
        Framework framework = Frames.invented();
        return Underlays.page(framework, Layout.of(framework, paper, denominator), LocalDate.of(2026, 11, 25));
    }

    @ParameterizedTest
    @CsvSource({"A0, 5", "A1, 10", "A2, 10", "A3, 20", "A4, 20", "A4, 40", "A0, 40"})
    void everyDimensionMeasuresRightInPdfAndSvg(PaperSize paper, int scale) throws Exception {
        Locale.setDefault(Locale.GERMANY);
        VectorPage page = page(paper, scale);

        check(Boxes.ofPdf(PdfWriter.of(page)), scale);
        check(Boxes.ofSvg(SvgWriter.of(page)), scale);
    }

    /** The rules of ISO 14289-1, which take a file for granted that any reader of PDF can read. */
    @ParameterizedTest
    @CsvSource({"A0, 5", "A3, 20", "A4, 40"})
    void isARightAndAccessiblePdf(PaperSize paper, int scale) {
        assertThat(PdfChecker.faults(PdfWriter.of(page(paper, scale)))).isEmpty();
    }

    /** All lengths from the front wheel centre and the ground, in mm of the vehicle: D is 800, the wheelbase 2800. */
    private static void check(List<Rectangle2D> boxes, int scale) {
        List<Rectangle2D> tyres = boxes.stream()
                .filter(box -> near(box.getWidth(), 800.0 / scale) && near(box.getHeight(), 800.0 / scale))
                .sorted(Comparator.comparing(Rectangle2D::getCenterX))
                .toList();
        Rectangle2D front = tyres.get(0);
        Rectangle2D rear = tyres.get(tyres.size() - 1);
        assertThat(rear.getCenterX() - front.getCenterX()).isCloseTo(2800.0 / scale, within(TENTH));
        Seen seen = new Seen(boxes, front.getCenterX(), front.getMaxY(), scale);
        seen.circle(432, 0);
        seen.circle(432, 2800);
        seen.circle(800, 800);
        seen.circle(800, 1600);
        seen.circle(800, 2400);
        seen.upright("nose", -800, 0, 1080);
        seen.upright("tail", 3680, 0, 1080);
        seen.level("height", 1760, -800, 3680);
        seen.level("rocker", 440, 440, 2360);
        seen.level("clearance", 240, 440, 2360);
        seen.upright("cowl", 480, 920, 1320);
        seen.upright("front door", 600, 440, 1200);
        seen.upright("rear door", 2320, 440, 1200);
        seen.box("windscreen aim to the cowl, 45 degrees", 0, 560, 480, 1040);
        seen.box("windscreen", 480, 1040, 1200, 1760);
        seen.box("zone of the front overhang", -880, 160, -720, 1080);
        seen.box("zone of the rear overhang", 3600, 160, 3800, 1080);
        seen.box("zone of the height", -800, 1680, 3680, 1880);
        seen.box("zone of the wheelbase", 2600, 344, 3000, 456);
        seen.box("zone of the rocker", 440, 400, 2360, 480);
        seen.box("zone of the dash to axle", 400, 920, 600, 1320);
        seen.box("zone of the front door", 560, 440, 640, 720);
        seen.level("lower edge of the clearance", 200, 440, 2360);
        assertThat(boxes).as("check bar").anyMatch(box -> near(box.getWidth(), 100) && near(box.getHeight(), 0));
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= TENTH;
    }

    private record Seen(List<Rectangle2D> boxes, double originX, double groundY, int scale) {

        void box(String name, double x1, double z1, double x2, double z2) {
            double left = originX + x1 / scale;
            double top = groundY - z2 / scale;
            assertThat(boxes)
                    .as(name)
                    .anyMatch(box -> near(box.getX(), left)
                            && near(box.getY(), top)
                            && near(box.getWidth(), (x2 - x1) / scale)
                            && near(box.getHeight(), (z2 - z1) / scale));
        }

        void upright(String name, double x, double from, double to) {
            box(name, x, from, x, to);
        }

        void level(String name, double z, double from, double to) {
            box(name, from, z, to, z);
        }

        void circle(double diameter, double x) {
            double r = diameter / 2;
            box("circle of " + diameter + " at " + x, x - r, 400 - r, x + r, 400 + r);
        }
    }

    /** The plane of approach leaves the tyre at its angle: rise over run of the line that ends at the nose. */
    @Test
    void anglesMeasureRight() throws Exception {
        List<Rectangle2D> boxes = Boxes.ofPdf(PdfWriter.of(page(PaperSize.A1, 10)));

        assertThat(boxes).as("approach of 30 degrees").anyMatch(box -> slope(box, 30) && box.getWidth() > 30);
        assertThat(boxes).as("departure of 26 degrees").anyMatch(box -> slope(box, 26) && box.getWidth() > 30);
    }

    private static boolean slope(Rectangle2D box, double degrees) {
        return Math.abs(Math.toDegrees(Math.atan2(box.getHeight(), box.getWidth())) - degrees) < 0.05;
    }

    @Test
    void nothingLeavesThePaper() throws Exception {
        for (PaperSize paper : PaperSize.values()) {
            for (Rectangle2D box : Boxes.ofPdf(PdfWriter.of(page(paper, null)))) {
                assertThat(box.getMinX()).isGreaterThanOrEqualTo(9.9);
                assertThat(box.getMinY()).isGreaterThanOrEqualTo(9.9);
                assertThat(box.getMaxX()).isLessThanOrEqualTo(paper.widthMm() - 9.9);
                assertThat(box.getMaxY()).isLessThanOrEqualTo(paper.heightMm() - 9.9);
            }
        }
    }

    /**
     * ISO 5455 names 1:2, 1:5, 1:10 and 1:20 among the reductions; 1:4 and 1:8 are common practice, no source. A1
     * would hold it at 1:6, too.
     */
    @ParameterizedTest
    @CsvSource({"A0, 5", "A1, 8", "A2, 10", "A3, 20", "A4, 20"})
    void asLargeAsFitsIsAStandardScale(PaperSize paper, int denominator) {
        assertThat(Layout.of(Frames.invented(), paper, null).denominator()).isEqualTo(denominator);
    }

    /** 4680 mm with the zones: 936 mm at 1:5, which A1 of 841 mm cannot hold and A0 of 1189 mm can; 585 mm at 1:8. */
    @Test
    void aSheetThatDoesNotFitSaysWhatDoes() {
        assertThatExceptionOfType(Impossible.class)
                .isThrownBy(() -> page(PaperSize.A1, 5))
                .satisfies(
                        refusal -> assertThat(refusal.errors().get(0).field()).isEqualTo("scale"))
                .withMessageContaining("936 by 376 mm")
                .withMessageContaining("1:8 fits A1")
                .withMessageContaining("1:5 fits A0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG"})
    void saysWhatItIsAndCautions(String locale) throws Exception {
        Locale.setDefault(Locale.forLanguageTag(locale));
        VectorPage page = page(PaperSize.A3, 20);

        try (PDDocument document = Loader.loadPDF(PdfWriter.of(page))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Tern & <Knot>")
                    .contains("Invented off-roaders \u00b7 2026-11-25")
                    .contains("1:20 on A3")
                    .contains("D 800 mm")
                    .contains("This bar is 100 mm long on a true print.")
                    .contains("3.25 to 3.75")
                    .contains("v3")
                    .contains("from 0.25")
                    .contains("4.50 wheels spanned, both counted; 3.50 centre to centre")
                    .contains("A proportion study, not a measurement of a vehicle.")
                    .contains("Local regulations and a licensed test body decide.");
        }
        assertThat(SvgWriter.of(page)).contains("Tern &amp; &lt;Knot&gt;");
    }
}
