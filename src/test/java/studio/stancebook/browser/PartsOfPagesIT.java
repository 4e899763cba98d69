package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** What pages are made of, in a real browser: the theme switch, the way by keyboard, the face of the letters. */
@StudioTest
class PartsOfPagesIT {

    /** The ground as settings/colours.css has it, as browsers report it. */
    private static final String FILM = "rgb(244, 242, 235)";

    private static final String BLUEPRINT = "rgb(18, 32, 43)";

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    private BrowserVisit visit;

    @AfterEach
    void close() {
        visit.close();
        assertThat(visit.complaints()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void switchTheThemeAndKeepItWithAndWithoutScript(boolean script) {
        Page page = signedIn(new NewContextOptions()
                .setColorScheme(ColorScheme.LIGHT)
                .setJavaScriptEnabled(script)
                .setViewportSize(1280, 900));
        page.navigate(studio.address() + "/style-guide?page=1");
        assertThat(ground(page)).isEqualTo(FILM);

        page.waitForResponse(
                answer -> answer.url().endsWith("/theme"),
                () -> page.getByRole(AriaRole.BUTTON, named("Dark")).click());
        page.waitForURL(studio.address() + "/style-guide?page=1");
        page.locator("html[data-theme=dark]").waitFor();
        assertThat(ground(page)).isEqualTo(BLUEPRINT);

        page.navigate(studio.address() + "/");
        assertThat(ground(page)).isEqualTo(BLUEPRINT);
        assertThat(page.getByRole(AriaRole.BUTTON, named("Dark")).getAttribute("aria-pressed"))
                .isEqualTo("true");
    }

    @Test
    void followTheSystemAsLongAsNothingElseIsChosen() {
        Page page = signedIn(new NewContextOptions().setColorScheme(ColorScheme.DARK));
        assertThat(ground(page)).isEqualTo(BLUEPRINT);
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        assertThat(ground(page)).isEqualTo(FILM);
    }

    @Test
    void letTheKeyboardSkipToTheContentAndShowWhereItIs() {
        Page page = signedIn(new NewContextOptions().setViewportSize(1280, 900));
        page.keyboard().press("Tab");
        assertThat(page.evaluate("document.activeElement.className")).isEqualTo("skip");
        page.keyboard().press("Enter");
        page.keyboard().press("Tab");
        assertThat(page.evaluate("document.activeElement.closest('main') !== null"))
                .isEqualTo(true);
        assertThat(page.evaluate("getComputedStyle(document.activeElement).outlineStyle"))
                .isEqualTo("solid");
        assertThat(page.evaluate("getComputedStyle(document.activeElement).outlineWidth"))
                .isEqualTo("3px");
    }

    @Test
    void areSetInTheFaceServedFromHereWithFiguresOfOneWidth() {
        Page page = signedIn(new NewContextOptions().setViewportSize(1280, 900));
        page.navigate(studio.address() + "/style-guide");
        assertThat(page.evaluate("document.fonts.ready.then(() => document.fonts.check('16px Overpass'))"))
                .isEqualTo(true);
        Object widths = page.evaluate("""
                () => [...'0123456789'].map(figure => {
                  const span = document.createElement('span');
                  span.textContent = figure.repeat(20);
                  document.querySelector('main').append(span);
                  const width = span.getBoundingClientRect().width;
                  span.remove();
                  return Math.round(width * 100);
                }).filter((width, at, all) => all.indexOf(width) === at).length
                """);
        assertThat(widths).isEqualTo(1);
    }

    private static String ground(Page page) {
        return page.locator("html")
                .evaluate("html => getComputedStyle(html).backgroundColor")
                .toString();
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private Page signedIn(NewContextOptions options) {
        visit = BrowserVisit.of(studio.person(Role.DESIGNER), chromium, studio, options);
        return visit.page();
    }
}
