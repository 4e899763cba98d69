package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import studio.stancebook.PdfChecker;
import studio.stancebook.PdfWords;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.band.BandSetting;
import studio.stancebook.demo.InventedCatalogue;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;
import studio.stancebook.statistics.BandMethod;

/** The sheet that a review signs, read back from the PDF. */
@StudioTest
class ReviewSheetTest extends ProposalPageVisitor {

    private byte[] sheet() {
        return sheet(made(Role.DESIGNER));
    }

    private byte[] sheet(ProposalView proposal) {
        return studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1" + address(proposal) + "/sheet.pdf")
                .exchange()
                .expectStatus()
                .isOk()
                .expectHeader()
                .contentType("application/pdf")
                .expectBody()
                .returnResult()
                .getResponseBodyContent();
    }

    /** A3 of ISO 216 is 420 by 297 mm; a point is 1/72 in. */
    @Test
    void isOneA3PageWithEverythingToDecideOn() throws Exception {
        byte[] file = sheet();

        assertThat(file.length).isLessThan(300_000);
        try (PDDocument document = Loader.loadPDF(file)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            PDPage page = document.getPage(0);
            assertThat(page.getMediaBox().getWidth()).isCloseTo(420 / 25.4f * 72, within(0.1f));
            assertThat(page.getMediaBox().getHeight()).isCloseTo(297 / 25.4f * 72, within(0.1f));
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                    .contains("Tern, revision 1")
                    .contains("Segment of a test")
                    .contains("1 of 1 judged measures outside, 0 too close to call")
                    .contains("Wheelbase, centre to centre 4.00 3.00 to 3.50 outside, high")
                    .contains("To the edge: wheelbase \u2212350")
                    .contains("All bands at version 1.")
                    .contains("First sketch")
                    .contains("Decision", "Signature")
                    .contains("A proportion study, not a measurement of a vehicle");
            for (COSName name : page.getResources().getFontNames()) {
                assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
            }
            assertThat(page.getResources().getXObjectNames())
                    .as("nothing but vectors")
                    .isEmpty();
        }
    }

    @Test
    void isTaggedInReadingOrder() throws Exception {
        try (PDDocument document = Loader.loadPDF(sheet())) {
            PDStructureElement whole = (PDStructureElement) document.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getKids()
                    .get(0);
            List<PDStructureElement> parts =
                    whole.getKids().stream().map(PDStructureElement.class::cast).toList();
            assertThat(parts.get(0).getStructureType()).isEqualTo("H1");
            assertThat(parts).extracting(PDStructureElement::getStructureType).contains("H2", "P", "Figure", "Table");
            assertThat(parts)
                    .filteredOn(part -> part.getStructureType().equals("Figure"))
                    .allSatisfy(figure ->
                            assertThat(figure.getAlternateDescription()).isNotBlank());
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentInformation().getTitle()).contains("Tern");
        }
    }

    @Test
    void keepsToTheStandardForAccess() {
        assertThat(PdfChecker.faults(sheet())).isEmpty();
    }

    /**
     * A complete set and a band for every measure, narrow ones, so that nearly all are outside: each stands on the one sheet,
     * in letters of 2.3 mm or more, and none lies over another.
     */
    @Test
    void hasRoomForEveryMeasure() {
        DimensionSet complete = InventedCatalogue.vehicles().get(0).dimensions();
        Subject subject = new Subject(complete);
        List<String> judged = new ArrayList<>();
        for (Measure measure : MeasureRegistry.builtIn().all()) {
            if (measure.of(subject) instanceof Measured measured
                    && !measure.key().equals(MEASURE)) {
                double off = judged.size() % 4 == 0 ? -0.5 : 0.05;
                double step = Math.max(0.1, Math.abs(measured.value()) * 0.05);
                bands.set(
                        segment,
                        measure.key(),
                        BandSetting.of(new BandMethod.Rule(
                                measured.value() + off * step, measured.value() + off * step + step, "Of a test")),
                        "Of a test",
                        null,
                        new Author(null, "Lead"));
                judged.add(measure.name());
            }
        }
        assertThat(judged).hasSizeGreaterThan(32);

        byte[] file = sheet(
                proposals.make(new ProposalDraft("Tern", segment, complete, "Complete"), studio.person(Role.DESIGNER)));

        List<PdfWords.Line> lines = PdfWords.of(file);
        String text = lines.stream().map(PdfWords.Line::text).collect(Collectors.joining(" "));
        assertThat(text.replaceAll("\\s+", " ")).contains(judged).doesNotContain("for want of room");
        assertThat(PdfWords.collisions(lines)).isEmpty();
        assertThat(lines).allSatisfy(line -> {
            assertThat(line.box().getMinX()).as(line.text()).isGreaterThan(10);
            assertThat(line.box().getMaxX()).as(line.text()).isLessThan(410);
            assertThat(line.sizeMm()).as(line.text()).isGreaterThan(2.2);
        });
        assertThat(PdfChecker.faults(file)).isEmpty();
        assertThat(file.length).isLessThan(300_000);
    }

    @Test
    void isSavedUnderTheNameOfItsProposalAndRevision() {
        ProposalView made = made(Role.DESIGNER);
        String saved = studio.browser(Role.DESIGNER)
                .get(address(made) + "/review-sheet.pdf")
                .headers()
                .firstValue("Content-Disposition")
                .orElse("");

        assertThat(saved).startsWith("attachment; filename=").endsWith("-r1-review.pdf\"");
    }

    @Test
    void isLinkedFromItsPageAndHiddenFromWhoMayNotSeeTheProposal() {
        ProposalView made = made(Role.DESIGNER);

        assertThat(studio.browser(Role.DESIGNER).get(address(made)).body()).contains("/review-sheet.pdf");
        assertThat(studio.browser(Role.LEARNER)
                        .get(address(made) + "/review-sheet.pdf")
                        .statusCode())
                .isEqualTo(404);
        assertThat(studio.browser(Role.DESIGNER)
                        .get(address(made) + "/review-sheet.pdf?revision=9")
                        .statusCode())
                .isEqualTo(404);
    }
}
