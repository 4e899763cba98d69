package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.net.URI;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;
import studio.stancebook.account.SignedIn;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.statistics.BandMethod;

/** The pages of proposals, used as without script. */
@StudioTest
class ProposalPagesTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Bands bands;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Proposals proposals;

    @Autowired
    EntityManagerFactory entities;

    private String segment = "";

    @BeforeEach
    void makeSegmentWithABand() {
        segment = Invented.key("proposal-pages");
        segments.create(segment, "Segment of a test", "");
        setBand(3, 3.5, 0);
        for (int wheels = 3; wheels <= 5; wheels++) {
            catalogue.add(Invented.draft(segment, Invented.name("Benchmark"), 700 * wheels), "Tests");
        }
    }

    private void setBand(double lower, double upper, long expected) {
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Rule(lower, upper, "Of a test")),
                "Of a test",
                expected == 0 ? null : new ExpectedVersion(expected),
                "Lead");
    }

    private Map<String, String> form(String... more) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("name", "Tern");
        form.put("segment", segment);
        form.put("note", "First sketch");
        form.put("dimensions.wheelbase", "2800");
        form.put("dimensions.frontTyreDiameter", "700");
        form.put("dimensions.rearTyreDiameter", "700");
        for (int i = 0; i < more.length; i += 2) {
            form.put(more[i], more[i + 1]);
        }
        return form;
    }

    private static DimensionSet dimensions(double wheelbase) {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, wheelbase)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .build();
    }

    private ProposalView made(Role role) {
        return proposals.make(
                new ProposalDraft("Tern", segment, dimensions(2800), "First sketch"), studio.person(role));
    }

    private static String target(HttpResponse<String> redirect) {
        return URI.create(redirect.headers().firstValue("Location").orElseThrow())
                .getPath();
    }

    private static String address(ProposalView proposal) {
        return "/proposals/" + proposal.id();
    }

    @Test
    void makeAProposalAndShowWhatItIsJudgedToBe() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);

        HttpResponse<String> made = designer.submit("/proposals/new", "/proposals", form());

        assertThat(made.statusCode()).isEqualTo(302);
        String page = target(made);
        assertThat(designer.get(page).body())
                .contains("Tern is made and judged.")
                .contains("Tern, revision 1")
                .contains("One of 1 measures is outside its band")
                .contains("none is too close to call")
                .contains("0.500 above the band, 1.0 of its width.")
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
        assertThat(designer.get(edit).body())
                .contains("for review")
                .doesNotContain("agreed")
                .doesNotContain("??");

        assertThat(designer.submit(edit, address(made), change).statusCode()).isEqualTo(302);
        assertThat(designer.get(address(made)).body())
                .contains("Tern long is changed.")
                .contains("for review");

        HttpResponse<String> stale = designer.submit(edit, address(made), change);
        assertThat(stale.statusCode()).isEqualTo(412);
        assertThat(stale.body()).contains("saved before you did");
        assertThat(studio.browser(Role.LEAD).get(edit).body()).contains("agreed");
    }

    @Test
    void listProposalsByWhatIsLookedFor() {
        ProposalView made = made(Role.DESIGNER);
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        assertThat(viewer.get("/proposals?segment=" + segment).body())
                .contains("href=\"" + address(made) + "\"")
                .contains("Designer of the tests")
                .doesNotContain("/proposals/new")
                .doesNotContain("??");
        assertThat(viewer.get("/proposals?segment=" + segment + "&stage=agreed").body())
                .contains("No proposal is like this");
        assertThat(viewer.get("/proposals?segment=" + segment + "&sort=outside,desc")
                        .statusCode())
                .isEqualTo(200);
        assertThat(studio.browser(Role.DESIGNER).get("/proposals").body()).contains("/proposals/new");
    }

    /** However many proposals, segments and owners a page lists, it asks the database as often. */
    @Test
    void listManyProposalsWithAsFewStatementsAsOne() {
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        made(Role.DESIGNER);
        long one = statementsFor(viewer, "/proposals?segment=" + segment);

        for (Role role : new Role[] {Role.LEAD, Role.DESIGNER, Role.TUTOR, Role.LEARNER}) {
            for (int i = 0; i < 5; i++) {
                made(role);
            }
        }

        assertThat(viewer.get("/proposals?segment=" + segment).body()).contains("1 to 21 of 21");
        assertThat(statementsFor(viewer, "/proposals?segment=" + segment)).isEqualTo(one);
    }

    /** The least of three, since work behind the scenes may add some. */
    private long statementsFor(StudioBrowser viewer, String page) {
        return IntStream.range(0, 3)
                .mapToLong(time -> statementsOnce(viewer, page))
                .min()
                .orElseThrow();
    }

    private long statementsOnce(StudioBrowser viewer, String page) {
        Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        viewer.get(page);
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);
        return statements;
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
                .contains("wheelbase \u22120.50, or tyre diameter +0.14.");
        assertThat(designer.get("/proposals?segment=" + segment).body()).contains("unscaled sketch");
    }

    @Test
    void hideFromALearnerWhatOthersOwn() {
        ProposalView others = made(Role.DESIGNER);
        ProposalView own = made(Role.LEARNER);
        StudioBrowser learner = studio.browser(Role.LEARNER);

        for (String part : new String[] {"", "/edit", "/revise"}) {
            assertThat(learner.get(address(others) + part).statusCode()).isEqualTo(404);
            assertThat(learner.get(address(own) + part).statusCode()).isEqualTo(200);
        }
        assertThat(learner.get("/proposals?segment=" + segment).body())
                .contains(address(own))
                .doesNotContain(address(others) + "\"");
        assertThat(learner.submit("/proposals/new", address(others) + "/revise", form())
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void letOnlyOwnersAndTheLeadChangeAProposal() {
        ProposalView made = made(Role.LEAD);

        for (Role role : new Role[] {Role.DESIGNER, Role.TUTOR}) {
            StudioBrowser browser = studio.browser(role);
            assertThat(browser.get(address(made)).body()).doesNotContain(address(made) + "/revise");
            assertThat(browser.get(address(made) + "/revise").statusCode()).isEqualTo(403);
            assertThat(browser.submit("/proposals/new", address(made) + "/revise", form())
                            .statusCode())
                    .isEqualTo(403);
            assertThat(browser.submit("/proposals/new", address(made), form()).statusCode())
                    .isEqualTo(403);
        }
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        assertThat(viewer.get("/proposals/new").statusCode()).isEqualTo(403);
        assertThat(viewer.submit("/account", "/proposals", form()).statusCode()).isEqualTo(403);
    }
}
