package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.core.instrument.MeterRegistry;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonEntry;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.problem.ExpectedVersion;

/** A page of a proposal that was made before is shown again, but only while nothing of it has changed, and to whom it may be. */
@StudioTest
class CachedProposalPageTest extends ProposalPageVisitor {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");

    @Autowired
    PersonService people;

    @Autowired
    StudioMeasures measures;

    @Autowired
    MeterRegistry meters;

    @Test
    void rendersDrawingAndStripsOnceForEverybody() {
        String page = address(made(Role.DESIGNER));
        double before = rendered();

        List.of(Role.VIEWER, Role.TUTOR, Role.VIEWER)
                .forEach(role -> studio.browser(role).get(page));

        assertThat(rendered() - before).isEqualTo(2);
    }

    private double rendered() {
        return meters.get("cache.gets")
                .tags("cache", "fragments", "result", "miss")
                .functionCounter()
                .count();
    }

    @Test
    void isKeptInTheUnitsOfWhoReadsIt() {
        String page = address(made(Role.DESIGNER));
        StudioBrowser inches = studio.browser(Role.VIEWER);
        inches.submit("/", "/units", Map.of("length", "in"));

        // 2800 / 25.4 = 110.236...
        assertThat(studio.browser(Role.VIEWER).get(page).body())
                .contains("2800")
                .doesNotContain("110.24");
        assertThat(inches.get(page).body()).contains("110.24 in").doesNotContain("2800 mm");
        assertThat(studio.browser(Role.VIEWER).get(page).body())
                .contains("2800")
                .doesNotContain("110.24");
    }

    @Test
    void leavesWhatProgramsReadAsItIs() {
        long id = made(Role.DESIGNER).id();
        StudioBrowser browser = studio.browser(Role.VIEWER);
        browser.submit("/", "/units", Map.of("length", "in"));
        browser.submit("/", "/units", Map.of("angles", "vertical"));

        String answer = studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/proposals/" + id)
                .header("Cookie", "units=in-vertical")
                .exchange()
                .expectStatus()
                .isOk()
                .returnResult(String.class)
                .getResponseBody();
        assertThat(answer).contains("\"wheelbase\":2800").doesNotContain("110.2");
    }

    @Test
    void showsWhatOthersChangedAtTheNextRequest() {
        ProposalView proposal = made(Role.DESIGNER);
        SignedIn designer = studio.person(Role.DESIGNER);
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        String page = address(proposal);
        assertThat(viewer.get(page).body()).contains("Tern").contains(">draft<").doesNotContain("Second sketch");

        proposal = proposals.change(
                proposal.id(),
                new ExpectedVersion(proposal.version()),
                new ProposalChange("Dunlin", segment, Stage.FOR_REVIEW),
                designer);
        assertThat(viewer.get(page).body())
                .contains("Dunlin")
                .contains(">for review<")
                .doesNotContain("Tern");

        proposals.revise(
                proposal.id(), new ExpectedVersion(proposal.version()), dimensions(2900), "Second sketch", designer);
        assertThat(viewer.get(page).body()).contains("Second sketch").contains("Dunlin, revision 2");
        assertThat(viewer.get(page + "?revision=1").body()).contains("Dunlin, revision 1");
        assertThat(viewer.get(page + "?revision=3").statusCode()).isEqualTo(404);
    }

    @Test
    void showsTheClassThatItWasJudgedByAndSaysWhatTheBandsOfNowWould() {
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        ProposalView proposal = made(Role.DESIGNER);
        String page = address(proposal);
        assertThat(viewer.get(page).body()).contains("judge this revision the same");

        setBand(4.5, 5, 1);
        assertThat(viewer.get(page).body()).doesNotContain("judge this revision the same");

        String name = Invented.name("Newcomer");
        PackageView added = catalogue.add(Invented.draft(segment, name, 2450), new Author(null, "Tests"));
        assertThat(viewer.get(page).body()).doesNotContain(name);

        proposals.revise(
                proposal.id(),
                new ExpectedVersion(proposal.version()),
                dimensions(2900),
                "Second sketch",
                studio.person(Role.DESIGNER));
        assertThat(viewer.get(page).body()).contains(name);

        catalogue.delete(added.id(), new ExpectedVersion(added.version()));
        assertThat(viewer.get(page).body()).doesNotContain(name).contains("deleted since (up to 1)");
    }

    @Test
    void showsTheNamesOfNow() {
        SignedIn owner = studio.add(Invented.key("owner") + "@studio.example", "Name of before", Role.DESIGNER);
        ProposalView proposal =
                proposals.make(new ProposalDraft("Tern", segment, dimensions(2800), "First sketch"), owner);
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        String page = address(proposal);
        assertThat(viewer.get(page).body()).contains("Name of before").contains("Segment of a test");

        PersonEntry person = people.get(owner.personId());
        people.change(
                person.id(),
                new ExpectedVersion(person.version()),
                new PersonChange("Name of now", Role.DESIGNER.key(), true));
        assertThat(viewer.get(page).body())
                .contains("by Name of now; this revision by Name of now")
                .doesNotContain("Name of before");

        SegmentView view = segments.get(segment);
        segments.change(segment, new ExpectedVersion(view.version()), "Segment of now", "");
        assertThat(viewer.get(page).body()).contains("Segment of now").doesNotContain("Segment of a test");
    }

    @Test
    void isInAnotherStateAsSoonAsTheStudioHasAnotherMeasure() {
        ProposalView proposal = made(Role.DESIGNER);
        SignedIn viewer = studio.person(Role.VIEWER);
        ProposalState before = proposals.state(proposal.id(), null, viewer);
        String key = Invented.key("ratio");

        measures.add(
                new StudioRatio(
                        key, "Ratio of a test", List.of(Reading.WHEELBASE), List.of(Reading.FRONT_TYRE_DIAMETER)),
                new Author(null, "Tests"));

        assertThat(proposals.state(proposal.id(), null, viewer)).isNotEqualTo(before);
        measures.remove(key);
        assertThat(proposals.state(proposal.id(), null, viewer)).isEqualTo(before);
    }

    @Test
    void offersChangesToThoseAloneWhoMayMakeThem() {
        String page = address(made(Role.DESIGNER));
        String change = page + "/revise";

        for (int again = 0; again < 2; again++) {
            assertThat(studio.browser(Role.DESIGNER).get(page).body()).contains(change);
            assertThat(studio.browser(Role.LEAD).get(page).body()).contains(change);
            assertThat(studio.browser(Role.TUTOR).get(page).body()).doesNotContain(change);
            assertThat(studio.browser(Role.VIEWER).get(page).body()).doesNotContain(change);
            assertThat(studio.browser(Role.LEARNER).get(page).statusCode()).isEqualTo(404);
        }
    }

    @Test
    void namesItsReaderAndTakesFormsOfItsReaderAlone() {
        String page = address(made(Role.DESIGNER));
        StudioBrowser lead = studio.browser(Role.LEAD);
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        String ofLead = lead.get(page).body();
        String ofViewer = viewer.get(page).body();

        assertThat(ofLead).contains("Lead of the tests").doesNotContain("Viewer of the tests");
        assertThat(ofViewer).contains("Viewer of the tests").doesNotContain("Lead of the tests");
        assertThat(viewer.post("/theme", Map.of("theme", "dark", "_csrf", token(ofLead)))
                        .statusCode())
                .isEqualTo(403);
        assertThat(viewer.post("/theme", Map.of("theme", "dark", "_csrf", token(ofViewer)))
                        .statusCode())
                .isEqualTo(303);
        assertThat(viewer.get(page).body()).contains("data-theme=\"dark\"");
        assertThat(lead.get(page).body()).doesNotContain("data-theme=\"dark\"");
    }

    private static String token(String page) {
        Matcher token = TOKEN.matcher(page);
        assertThat(token.find()).isTrue();
        return token.group(1);
    }
}
