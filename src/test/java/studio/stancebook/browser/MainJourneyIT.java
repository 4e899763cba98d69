package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** The main job in a real browser: bring in benchmarks, set a band, judge a proposal, correct it, see it pass. */
@StudioTest
class MainJourneyIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    private BrowserVisit visit;

    @AfterEach
    void close() {
        visit.close();
    }

    @Test
    void goesFromRealDataThroughABandToAProposalThatPasses() {
        Page page = signedIn(ColorScheme.LIGHT, 1280);

        bringInCar90(page);
        setBand(page);
        enterProposalOutsideIt(page);
        correctIt(page);

        assertThat(visit.complaints()).isEmpty();
    }

    /** car90 of R's rpart, see reference/SOURCES.md: 111 rows, of which 6 have no class and 3 tyres no aspect ratio. */
    private void bringInCar90(Page page) {
        page.navigate(studio.address() + "/bring-in");
        page.getByLabel("Table").setInputFiles(Path.of("src/test/resources/reference/car90.csv"));
        page.getByRole(AriaRole.BUTTON, button("Read the file")).click();
        column(page, "row").selectOption(new SelectOption().setLabel("Name"));
        column(page, "type").selectOption(new SelectOption().setLabel("Segment"));
        page.locator("input[name=partial]").check();
        page.locator("input[name=createSegments]").check();
        page.locator("main form").last().locator("button").last().click();
        Locator write = page.getByText("Import 105");
        write.waitFor();
        write.click();
        page.getByRole(AriaRole.LINK, link("To the catalogue")).waitFor();
        assertThat(page.locator("main").innerText()).contains("105");
    }

    private static Locator column(Page page, String heading) {
        return page.getByLabel("What the column " + heading + " holds", new Page.GetByLabelOptions().setExact(true));
    }

    private void setBand(Page page) {
        page.navigate(studio.address() + "/segments/compact/bands/wheelbase-share?method=rule");
        page.getByLabel("Lower limit").fill("0.54");
        page.getByLabel("Upper limit").fill("0.58");
        page.locator("#f-reason").fill("Room without a long tail");
        page.getByRole(AriaRole.BUTTON, button("Set the band")).click();
        assertThat(page.locator("main").innerText()).contains("The band is set: version 1");
    }

    private void enterProposalOutsideIt(Page page) {
        page.navigate(studio.address() + "/proposals/new?from=nothing");
        page.locator("#f-name").fill("Wigeon");
        page.locator("#f-segment").selectOption("compact");
        page.locator("#dimensions-wheelbase").fill("2800");
        page.locator("#section-lengths").click();
        page.locator("#dimensions-overallLength").fill("4500");
        page.getByRole(AriaRole.BUTTON, button("Save the proposal")).click();

        // 2800 / 4500 = 0.6222 lies 0.0422 above 0.58; 0.58 x 4500 = 2610 is 190 mm less wheelbase, 2800 / 0.58 = 4828
        // is 328 mm more length.
        assertThat(page.locator(".finding").innerText()).contains("One of 1 measures is outside its band");
        assertThat(page.locator("#verdicts").innerText())
                .contains("outside, high")
                .contains("0.042")
                .contains("\u2212190")
                .contains("+328");
    }

    private void correctIt(Page page) {
        page.getByRole(AriaRole.LINK, link("Revise")).click();
        page.locator("#dimensions-wheelbase").fill("2520");
        page.getByRole(AriaRole.BUTTON, button("Save the revision")).click();

        assertThat(page.locator(".finding").innerText()).contains("not outside its band");
        assertThat(page.locator("#verdicts").innerText()).contains("inside");
        assertThat(page.locator("#difference").innerText()).contains("2800").contains("2520");
    }

    private Page signedIn(ColorScheme scheme, int width) {
        visit = BrowserVisit.of(studio.person(Role.LEAD), chromium, studio, scheme, width);
        return visit.page();
    }

    private static Page.GetByRoleOptions link(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }
}
