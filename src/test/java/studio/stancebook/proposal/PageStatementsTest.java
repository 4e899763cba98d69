package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.Import;
import studio.stancebook.CountedStatements;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Invented;

/**
 * How many statements the pages that are opened most send to the database, that of the session included. The studio's own
 * goal is fewer than 8, see docs/performance.md.
 */
@StudioTest
@Import(CountedStatements.class)
class PageStatementsTest extends ProposalPageVisitor {

    @Test
    void becomeNoMoreOnPagesThatAreOpenedOften() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        long packageId = catalogue
                .add(
                        Invented.draft(segment, "Opened", 2500),
                        studio.person(Role.DESIGNER).author())
                .id();
        Map<String, Integer> most = Map.of(
                "/",
                9,
                "/catalogue",
                6,
                "/segments/" + segment,
                6,
                address(made(Role.DESIGNER)),
                8,
                "/packages/" + packageId,
                7);

        most.forEach((page, limit) -> {
            assertThat(designer.get(page).statusCode()).as(page).isEqualTo(200);
            assertThat(fewest(designer, page)).as(page).isBetween(1, limit);
        });
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
