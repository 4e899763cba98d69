package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.InventedFleet;
import studio.stancebook.catalogue.Segments;

/** A lead makes a segment, records a package, sets it aside and looks at the class, in a real browser. */
@StudioTest
class CatalogueJourneyIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    private BrowserVisit visit;

    @AfterEach
    void close() {
        visit.close();
    }

    @Test
    void goesFromAnEmptySegmentToItsClass() {
        Page page = signedIn(ColorScheme.LIGHT, 1280);

        page.navigate(studio.address() + "/segments/new");
        String name = Invented.name("Browser saloons");
        page.getByLabel("Name").fill(name);
        page.getByRole(AriaRole.BUTTON, button("Make a segment")).click();
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains(name);
        page.getByRole(AriaRole.LINK, link("Record a package")).click();
        page.locator("#f-name").fill("Recorded in the browser");
        page.locator("#dimensions-wheelbase").fill("280");
        page.getByRole(AriaRole.BUTTON, button("Save the package")).click();
        assertThat(page.getByRole(AriaRole.ALERT).innerText()).contains("outside the plausible range 1000 to 6000 mm");
        page.locator("#dimensions-wheelbase").fill("110 in");
        page.locator("#section-tyres").click();
        page.locator("#dimensions-frontTyreDiameter").fill("660");
        page.locator("#dimensions-rearTyreDiameter").fill("660");
        page.getByRole(AriaRole.BUTTON, button("Save the package")).click();
        page.getByText("Recorded in the browser is recorded").waitFor();
        assertThat(page.locator("#dimensions").innerText()).contains("2794");
        assertThat(page.locator("#measures").innerText()).contains("4.23");

        page.getByLabel("Reason to set the whole package aside").fill("Only a trial");
        page.getByRole(AriaRole.BUTTON, button("Set the package aside")).click();
        assertThat(page.locator("main").innerText())
                .contains("does not count in its class")
                .contains("Only a trial");
        page.getByRole(AriaRole.BUTTON, button("Count it again")).click();
        page.getByRole(AriaRole.LINK, link(name)).click();
        assertThat(page.locator("#class").innerText()).contains("1 package counts");
        assertThat(visit.complaints()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,360", "DARK,1280"})
    void meetsTheRulesOfAccessibilityOnEveryPage(ColorScheme scheme, int width) {
        String segment = Invented.key("rules");
        segments.create(segment, "Saloons for the rules", "Invented saloons, to look at pages with something on them.");
        List<Long> ids = catalogue.addAll(InventedFleet.of(segment), new Author(null, "Lead of the tests"));
        catalogue.setAside(ids.get(0), "Measured with a load", new Author(null, "Lead of the tests"));
        catalogue.setValueAside(
                ids.get(1), "overallHeight", "Roof rails counted", new Author(null, "Lead of the tests"));
        long second = catalogue
                .add(Invented.draft(segment, "Alike", 2700), new Author(null, "Lead"))
                .id();
        catalogue.add(Invented.draft(segment, "Alike again", 2700), new Author(null, "Lead"));
        Page page = signedIn(scheme, width);

        for (String path : List.of(
                "/catalogue?segment=" + segment,
                "/catalogue?view=pictures&measure=wheelbase-in-wheels&segment=" + segment,
                "/catalogue?q=nothing+of+the+kind&fromYear=x",
                "/packages/" + ids.get(1),
                "/packages/" + ids.get(0),
                "/packages/" + second,
                "/packages/" + second + "/edit",
                "/packages/" + second + "/delete",
                "/packages/new",
                "/segments",
                "/segments/new",
                "/segments/" + segment,
                "/segments/" + segment + "/edit",
                "/studio/ratios")) {
            check(page, path);
        }
        assertThat(visit.complaints()).isEmpty();
    }

    private void check(Page page, String path) {
        page.navigate(studio.address() + path);
        visit.meetsTheRules(path);
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
