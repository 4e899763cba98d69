package studio.stancebook.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.InventedFleet;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.Proposals;

/** A designer looks at the charts of a segment: points at benchmarks, walks by keyboard, looks closer. */
@StudioTest
class ChartsIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    Proposals proposals;

    private BrowserVisit visit;

    @AfterEach
    void leave() {
        visit.close();
        assertThat(visit.complaints()).isEmpty();
    }

    private String charted() {
        String segment = Invented.key("charted");
        segments.create(segment, "Saloons in a chart", "Invented saloons.");
        List<PackageDraft> fleet = InventedFleet.of(segment);
        catalogue.addAll(fleet, new Author(null, "Lead of the tests"));
        proposals.make(new ProposalDraft("Tern", segment, fleet.get(3).dimensions(), ""), studio.person(Role.DESIGNER));
        return segment;
    }

    private Page charts(String segment, ColorScheme scheme, int width) {
        visit = BrowserVisit.of(studio.person(Role.DESIGNER), chromium, studio, scheme, width);
        return visit.open("/segments/" + segment + "/charts");
    }

    @Test
    void namesWhatIsPointedAtAndOpensIt() {
        Page page = charts(charted(), ColorScheme.LIGHT, 1280);
        Locator said = page.locator("[data-scatter-said]");
        Locator alder = page.locator(".scatter__dot[aria-label^='Alder:']");

        alder.dispatchEvent("pointerenter");
        assertThat(said).containsText("Alder: ");
        assertThat(page.locator(".scatter a[tabindex='0']")).hasCount(1);
        page.locator(".scatter a[tabindex='0']").focus();
        String first = said.innerText();
        page.keyboard().press("ArrowRight");
        assertThat(said).not().hasText(first);
        String second = said.innerText();
        page.keyboard().press("Home");
        assertThat(said).hasText(first);
        page.keyboard().press("ArrowRight");
        assertThat(said).hasText(second);
        page.keyboard().press("Enter");
        page.waitForURL(address -> address.contains("/packages/") || address.contains("/proposals/"));
    }

    @Test
    void looksCloserAndBackAgain() {
        Page page = charts(charted(), ColorScheme.LIGHT, 1280);
        Locator ticks = page.locator("[data-axis=x] text");
        List<String> whole = ticks.allTextContents();

        page.getByRole(AriaRole.BUTTON, named("Closer")).click();
        page.getByRole(AriaRole.BUTTON, named("Closer")).click();
        assertThat(page.locator("[data-zoomed]"))
                .hasAttribute("transform", java.util.regex.Pattern.compile(".*scale\\(2\\.56.*"));
        assertThat(ticks.allTextContents()).isNotEqualTo(whole);
        visit.meetsTheRules("a chart looked at closely");

        page.getByRole(AriaRole.BUTTON, named("Whole")).click();
        assertThat(page.locator("[data-zoomed]"))
                .hasAttribute("transform", java.util.regex.Pattern.compile(".*scale\\(1\\)"));
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }
}
