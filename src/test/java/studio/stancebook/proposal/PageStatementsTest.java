package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.Import;
import studio.stancebook.CountedStatements;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;
import studio.stancebook.catalogue.Invented;

/** How many statements the pages that are opened most send to the database, that of the session included. */
@StudioTest
@Import(CountedStatements.class)
class PageStatementsTest extends ProposalPageVisitor {

    /** The studio's own goal. */
    private static final int FEWER_THAN = 8;

    @Test
    void areFewOnEveryPageThatIsOpenedOften() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        ProposalView proposal = made(Role.DESIGNER);
        Map<String, Integer> statements = new TreeMap<>();
        for (String page : new String[] {"/", "/catalogue", "/segments/" + segment, address(proposal), packageHere()}) {
            assertThat(designer.get(page).statusCode()).as(page).isEqualTo(200);
            statements.put(page, fewest(designer, page));
        }

        assertThat(statements.values()).as("%s", statements).allMatch(count -> count > 0 && count < FEWER_THAN);
    }

    private String packageHere() {
        return "/packages/" + catalogue.add(Invented.draft(segment, "Opened", 2500), "Tests").id();
    }

    /** The fewest of three times, because what is kept in memory for some seconds is read again now and then. */
    private static int fewest(StudioBrowser browser, String page) {
        return IntStream.range(0, 3)
                .map(time -> {
                    int before = CountedStatements.sent();
                    browser.get(page);
                    return CountedStatements.sent() - before;
                })
                .min()
                .orElseThrow();
    }
}
