package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.data.domain.PageRequest;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.problem.ExpectedVersion;

/** The pages of one proposal, used as without script. */
@StudioTest
class ProposalPagesTest extends ProposalPageVisitor {
    @Test
    void makeAProposalAndShowWhatItIsJudgedToBe() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);

        HttpResponse<String> made = designer.submit("/proposals/new", "/proposals", form());

        assertThat(made.statusCode()).isEqualTo(302);
        String page = target(made);
        assertThat(designer.get(page).body())
                .contains("Tern is saved and judged.")
                .contains("Tern, revision 1")
                .contains("One of 1 measures is outside its band")
                .contains("none is too close to call")
                .contains("0.500 above the band (100\u00a0% of its width).")
                .contains("To the edge: wheelbase \u2212350\u00a0mm, or tyre diameter +100\u00a0mm.")
                .contains("The bands of today judge this revision the same.")
                .contains("A proportion study, not a measurement of a vehicle.")
                .contains("measures are not measurable")
                .doesNotContain("??");
    }

    @Test
    void keepWhatWasTypedAndSayWhatIsWrong() {
        HttpResponse<String> refused = studio.browser(Role.DESIGNER)
                .submit(
                        "/proposals/new",
                        "/proposals",
                        form("name", " ", "dimensions.overallHeight", "tall", "dimensions.overallWidth", "1900"));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("2 entries are not accepted")
                .contains("href=\"#f-name\"")
                .contains("href=\"#dimensions-overallHeight\"")
                .contains("value=\"tall\"")
                .contains("value=\"1900\"")
                .contains("First sketch");
    }

    @Test
    void refuseWhatDoesNotClose() {
        HttpResponse<String> refused = studio.browser(Role.DESIGNER)
                .submit(
                        "/proposals/new",
                        "/proposals",
                        form(
                                "dimensions.overallLength", "4800",
                                "dimensions.frontOverhang", "800",
                                "dimensions.rearOverhang", "1000"));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("it does not close by 200 mm");
    }

    @Test
    void reviseFromAFormFilledWithTheNewestRevision() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        ProposalView made = made(Role.DESIGNER);
        String revise = address(made) + "/revise";
        assertThat(designer.get(revise).body()).contains("value=\"2800\"").doesNotContain("??");

        HttpResponse<String> revised = designer.submit(
                revise,
                revise,
                form("dimensions.wheelbase", "2310", "note", "Shorter", "version", String.valueOf(made.version())));

        assertThat(revised.statusCode()).isEqualTo(302);
        assertThat(designer.get(address(made)).body())
                .contains("Tern, revision 2")
                .contains("The one measure that was judged is not outside its band")
                .contains("Against revision 1")
                .contains("\u2212490 mm")
                .contains("Verdicts that changed")
                .doesNotContain("??");
        assertThat(designer.get(address(made) + "?revision=1").body())
                .contains("This is an earlier revision; the newest is revision 2.")
                .contains("One of 1 measures is outside its band");
        assertThat(designer.get(address(made) + "?revision=7").statusCode()).isEqualTo(404);
    }

    @Test
    void showBothVersionsToWhoWasOvertakenAndLoseNothing() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        SignedIn designer = studio.person(Role.DESIGNER);
        ProposalView made = made(Role.DESIGNER);
        String revise = address(made) + "/revise";
        proposals.revise(made.id(), new ExpectedVersion(made.version()), dimensions(2660), "By the owner", designer);

        HttpResponse<String> overtaken = lead.submit(
                revise,
                revise,
                form("dimensions.wheelbase", "2730", "note", "By the lead", "version", String.valueOf(made.version())));

        assertThat(overtaken.statusCode()).isEqualTo(412);
        assertThat(overtaken.body())
                .contains("Designer of the tests saved before you did")
                .contains("value=\"2730\"")
                .contains("value=\"2660\"")
                .contains("value=\"By the lead\"")
                .contains("value=\"By the owner\"");
        ProposalView now = proposals.get(made.id(), designer);
        assertThat(overtaken.body()).contains("name=\"version\" value=\"" + now.version() + "\"");
        HttpResponse<String> again = lead.submit(
                revise,
                revise,
                form("dimensions.wheelbase", "2730", "note", "By the lead", "version", String.valueOf(now.version())));
        assertThat(again.statusCode()).isEqualTo(302);
        assertThat(proposals
                        .revisions(made.id(), PageRequest.of(0, 10), designer)
                        .getTotalElements())
                .isEqualTo(3);
    }

    @Test
    void sayWhereTheBandsOfTodayJudgeOtherwise() {
        ProposalView made = made(Role.DESIGNER);
        setBand(3, 4.5, 1);

        assertThat(studio.browser(Role.VIEWER).get(address(made)).body())
                .contains("One measure would be judged otherwise.")
                .contains("One of 1 measures is outside its band");
    }

    @Test
    void changeNameSegmentAndStage() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        ProposalView made = made(Role.DESIGNER);
        String edit = address(made) + "/edit";
        Map<String, String> change =
                Map.of("name", "Tern long", "segment", segment, "stage", "for-review", "version", "" + made.version());
        assertThat(designer.get(edit).body()).doesNotContain("??");

        assertThat(designer.submit(edit, address(made), change).statusCode()).isEqualTo(302);
        assertThat(designer.get(address(made)).body())
                .contains("Tern long is changed.")
                .contains("for review");

        HttpResponse<String> stale = designer.submit(edit, address(made), change);
        assertThat(stale.statusCode()).isEqualTo(412);
        assertThat(stale.body()).contains("saved before you did");
    }

    @Test
    void sayOfASketchWithoutDimensionThatItIsOne() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        Map<String, String> sketch = form(
                "dimensions.scale", "unscaled",
                "dimensions.wheelbase", "4",
                "dimensions.frontTyreDiameter", "1",
                "dimensions.rearTyreDiameter", "1");

        String page = target(designer.submit("/proposals/new", "/proposals", sketch));

        assertThat(designer.get(page).body())
                .contains("unscaled sketch")
                .contains("This is a sketch without dimension")
                .contains("wheelbase \u22120.50, or tyre diameter +0.15.");
        assertThat(designer.get("/proposals?segment=" + segment).body()).contains("unscaled sketch");
    }

    @Test
    void giveTheSideViewAsAFileWithWhatIsOutsideInRed() {
        ProposalView made = made(Role.DESIGNER);
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        String drawing = "/proposals/" + made.id() + "/drawing";

        assertThat(designer.get("/proposals/" + made.id()).body()).contains(drawing + ".svg", drawing + ".png");
        assertThat(designer.get(drawing + ".svg?revision=1").body()).contains("<svg", "class=\"dimension out\"");
        assertThat(designer.get(drawing + ".svg?revision=7").statusCode()).isEqualTo(404);
        HttpResponse<String> picture = designer.get(drawing + ".png?layers=vehicle&width=400");
        assertThat(picture.statusCode()).isEqualTo(200);
        assertThat(picture.headers().firstValue("Content-Type")).hasValue("image/png");
    }
}
