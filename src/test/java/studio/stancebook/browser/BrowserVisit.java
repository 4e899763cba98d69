package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import studio.stancebook.StudioClients;
import studio.stancebook.account.SignedIn;

/** One person at one browser: signs in, opens pages, holds them to the rules, and hears what the browser complains of. */
final class BrowserVisit implements AutoCloseable {

    private final StudioClients studio;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new ArrayList<>();

    private BrowserVisit(Chromium chromium, StudioClients studio, NewContextOptions options) {
        this.studio = studio;
        this.context = chromium.browser().newContext(options);
        this.page = context.newPage();
        page.onConsoleMessage(message -> {
            boolean refusedForm = message.text().contains("status of 4");
            if (List.of("error", "warning").contains(message.type()) && !refusedForm) {
                complaints.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
    }

    /** A person who signed in and is at the board. */
    static BrowserVisit of(SignedIn who, Chromium chromium, StudioClients studio, NewContextOptions options) {
        BrowserVisit visit = new BrowserVisit(chromium, studio, options);
        visit.signIn(who);
        return visit;
    }

    /** Somebody who has not signed in and has opened nothing. */
    static BrowserVisit ofStranger(Chromium chromium, StudioClients studio, ColorScheme scheme, int width) {
        return new BrowserVisit(chromium, studio, window(scheme, width));
    }

    /** Signs in by the form and comes to the board. */
    void signIn(SignedIn who) {
        open("/sign-in");
        page.getByLabel("E-mail").fill(who.email());
        page.getByLabel("Password").fill(StudioClients.PASSWORD);
        page.keyboard().press("Enter");
        page.waitForURL(studio.address() + "/");
    }

    private static NewContextOptions window(ColorScheme scheme, int width) {
        return new NewContextOptions().setColorScheme(scheme).setViewportSize(width, 900);
    }

    /** The same with a window of some width in one of the themes. */
    static BrowserVisit of(SignedIn who, Chromium chromium, StudioClients studio, ColorScheme scheme, int width) {
        return of(who, chromium, studio, window(scheme, width));
    }

    Page page() {
        return page;
    }

    /** Opens a page of the studio. */
    Page open(String path) {
        page.navigate(studio.address() + path);
        return page;
    }

    /** The page as it is meets the rules of accessibility and is no wider than the window. */
    void meetsTheRules(String where) {
        List<Rule> violations = new AxeBuilder(page).analyze().getViolations();
        assertThat(violations)
                .as(where)
                .extracting(
                        Rule::getId,
                        Rule::getHelp,
                        rule -> rule.getNodes().get(0).getHtml())
                .isEmpty();
        assertThat(page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                .as("%s fits the window", where)
                .isEqualTo(true);
    }

    /** What the browser and the scripts of the pages complained of, but for forms that were to be refused. */
    List<String> complaints() {
        return complaints;
    }

    @Override
    public void close() {
        context.close();
    }
}
