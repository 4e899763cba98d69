package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;

/** The sheet that a review signs, read back from the PDF. */
@StudioTest
class ReviewSheetTest extends ProposalPageVisitor {

    private byte[] sheet() {
        return studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1" + address(made(Role.DESIGNER)) + "/sheet.pdf")
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
                    .contains("Wheelbase, centre to centre 4.00, outside, high")
                    .contains("To the edge: wheelbase \u2212350")
                    .contains("Wheelbase, centre to centre v1")
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
            assertThat(parts).extracting(PDStructureElement::getStructureType).contains("H2", "P", "Figure");
            assertThat(parts)
                    .filteredOn(part -> part.getStructureType().equals("Figure"))
                    .allSatisfy(figure ->
                            assertThat(figure.getAlternateDescription()).isNotBlank());
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentInformation().getTitle()).contains("Tern");
        }
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
