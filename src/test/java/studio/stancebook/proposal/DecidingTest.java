package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.problem.ExpectedVersion;

/** Asking for a decision, and taking it in the words of the review sheet. */
@StudioTest
class DecidingTest extends ProposalPageVisitor {

    private ProposalView made() {
        return made(Role.DESIGNER);
    }

    private HttpResponse<String> decide(StudioBrowser browser, ProposalView on, String outcome, String reason) {
        String page = "/proposals/" + on.id();
        return browser.submit(
                page,
                page + "/decision",
                Map.of(
                        "outcome",
                        outcome,
                        "reason",
                        reason,
                        "revision",
                        "" + on.newest().number()));
    }

    @Test
    void isAskedForByTheOwnerAndTakenByTheLead() throws Exception {
        ProposalView made = made();
        String page = "/proposals/" + made.id();
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        assertThat(designer.get(page).body()).contains("Ask for a decision").doesNotContain("Save the decision");

        designer.submit(page, page + "/stage", Map.of("stage", "for-review", "version", "" + made.version()));
        assertThat(designer.get(page).body()).contains("waits for a decision").contains("Withdraw from review");

        StudioBrowser lead = studio.browser(Role.LEAD);
        assertThat(lead.get(page).body())
                .contains("Save the decision", "accept as it is", "revise and show again", "stop");
        assertThat(decide(lead, made, "accept", "It reads as one piece").statusCode())
                .isEqualTo(302);

        assertThat(designer.get(page).body())
                .contains("accept as it is", "It reads as one piece", "agreed")
                .contains("Revision 1, Lead");
        byte[] sheet = studio.browser(Role.LEAD)
                .get(page + "/review-sheet.pdf", "identity")
                .body();
        assertThat(new PDFTextStripper().getText(Loader.loadPDF(sheet)))
                .contains("accept as it is: decided", "It reads as one piece");
    }

    @Test
    void needsAReasonAndAChoiceAndKeepsWhatWasTyped() {
        ProposalView made = made();
        StudioBrowser lead = studio.browser(Role.LEAD);
        assertThat(decide(lead, made, "stop", " "))
                .satisfies(answer -> assertThat(answer.statusCode()).isEqualTo(422))
                .satisfies(answer -> assertThat(answer.body()).contains("Write a reason.", "value=\"stop\" checked"));
        assertThat(decide(lead, made, "praise", "Why not").body()).contains("Choose what is decided.", "Why not");
        assertThat(proposals.get(made.id(), studio.person(Role.LEAD)).stage()).isEqualTo(Stage.DRAFT);
    }

    @Test
    void isNotTakenOnARevisionThatNobodyHasSeen() {
        ProposalView made = made();
        proposals.revise(
                made.id(),
                new ExpectedVersion(made.version()),
                made.newest().dimensions(),
                "Meanwhile",
                studio.person(Role.DESIGNER));
        HttpResponse<String> late = decide(studio.browser(Role.LEAD), made, "accept", "As it was");
        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.body()).contains("There is a newer revision, 2");
    }

    @Test
    void isForTheLeadAlone() {
        assertThat(decide(studio.browser(Role.DESIGNER), made(), "accept", "Mine")
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void isPutAwayAndTakenUpAgainByItsOwner() {
        ProposalView made = made();
        String page = "/proposals/" + made.id();
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        designer.submit(page, page + "/stage", Map.of("stage", "shelved", "version", "" + made.version()));
        assertThat(designer.get(page).body()).contains("is put away").contains("Take it up again");
        assertThat(designer.submit(page, page + "/stage", Map.of("stage", "nowhere", "version", "1"))
                        .statusCode())
                .isEqualTo(422);
        assertThat(designer.submit(page, page + "/stage", Map.of("stage", "draft", "version", "0"))
                        .statusCode())
                .isEqualTo(412);
    }
}
