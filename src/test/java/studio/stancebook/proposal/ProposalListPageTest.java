package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jakarta.persistence.EntityManagerFactory;
import java.util.stream.IntStream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.problem.ExpectedVersion;

/** The list of proposals, and what of it and behind it is whose. */
@StudioTest
class ProposalListPageTest extends ProposalPageVisitor {
    @Autowired
    EntityManagerFactory entities;

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
                .contains("No proposal matches");
        assertThat(viewer.get("/proposals?segment=" + segment + "&sort=outside,desc")
                        .statusCode())
                .isEqualTo(200);
        assertThat(studio.browser(Role.DESIGNER).get("/proposals").body()).contains("/proposals/new");
    }

    /** Read back from the picture: its wheels are as far apart, in wheels, as the newest revision says. */
    @Test
    void showEachProposalAsItsNewestRevisionIs() {
        ProposalView made = made(Role.DESIGNER);
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        assertThat(wheelbaseInWheels(viewer)).isEqualTo(2800 / 700.0, within(0.01));

        proposals.revise(
                made.id(),
                new ExpectedVersion(made.version()),
                dimensions(3500),
                "Longer",
                studio.person(Role.DESIGNER));

        assertThat(wheelbaseInWheels(viewer)).isEqualTo(3500 / 700.0, within(0.01));
    }

    private double wheelbaseInWheels(StudioBrowser viewer) {
        Elements tyres = Jsoup.parse(viewer.get("/proposals?segment=" + segment).body())
                .select("tbody th .side-view-thumbnail circle.tyre");
        assertThat(tyres).hasSize(2);
        return Math.abs(number(tyres.get(1), "cx") - number(tyres.get(0), "cx")) / 2 / number(tyres.get(0), "r");
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.attr(attribute));
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
}
