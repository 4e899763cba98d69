package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import studio.stancebook.StudioClients;
import studio.stancebook.access.SignedIn;

/** One person at one browser: signs in, opens pages, holds them to the rules, and hears what the browser complains of. */
final class BrowserVisit implements AutoCloseable {

    /** Rules of axe-core that look at colours; what else it looks at is the same in both themes. */
    private static final List<String> RULES_ON_COLOUR = List.of("color-contrast", "link-in-text-block");

    /** What can differ where there is little room. */
    private static final List<String> RULES_ON_ROOM =
            List.of("color-contrast", "link-in-text-block", "target-size", "scrollable-region-focusable");

    /** axe-core, from the jar of its binding for this browser library. */
    private static final String AXE = axe();

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

    /** The page as it is meets the rules of accessibility, has its headings in order and is no wider than the window. */
    void meetsTheRules(String where) {
        isAccessible(where, List.of());
        hasHeadingsInOrder(where);
        fits(where);
    }

    /**
     * The same in both themes, with everything unfolded, and no wider than a phone, a tablet or a wall either. The themes differ
     * in colours alone, so the dark one is held to the rules on colour; a phone in room, so it is held to the rules on that.
     */
    void meetsTheRulesThroughout(String where) {
        page.evaluate("document.querySelectorAll('details').forEach(part => part.open = true)");
        for (int width : List.of(2560, 1280, 768, 360)) {
            page.setViewportSize(width, 900);
            fits(where + " at " + width + " px");
            if (width == 1280) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
                isAccessible(where + ", dark", RULES_ON_COLOUR);
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
                isAccessible(where + ", light", List.of());
            } else if (width == 360) {
                isAccessible(where + ", light, at 360 px", RULES_ON_ROOM);
            }
        }
        hasHeadingsInOrder(where);
        page.setViewportSize(1280, 900);
    }

    /**
     * No violation of these rules of axe-core, or of any when none is named. Asks for violations alone, and passes over
     * drawings where it is about colours, which those rules do not read in them: to be quick.
     */
    private void isAccessible(String where, List<String> rules) {
        if (page.evaluate("typeof axe").equals("undefined")) {
            page.evaluate(AXE);
        }
        Object violations = page.evaluate("""
                async rules => {
                  const found = rules.length
                    ? await axe.run({exclude: ['svg']}, {resultTypes: ['violations'], runOnly: rules})
                    : await axe.run({resultTypes: ['violations']});
                  return found.violations.map(rule => `${rule.id}: ${rule.help}: ${rule.nodes[0].html}`);
                }
                """, rules);
        assertThat((List<?>) violations).as(where).isEmpty();
    }

    private static String axe() {
        try (InputStream script = Objects.requireNonNull(AxeBuilder.class.getResourceAsStream("/axe.min.js"))) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** One h1, which comes first, and no level left out on the way down. */
    private void hasHeadingsInOrder(String where) {
        String levels = page.evaluate("""
                [...document.querySelectorAll('main :is(h1, h2, h3, h4, h5, h6)')]
                  .filter(heading => heading.checkVisibility()).map(heading => heading.tagName[1]).join('')
                """).toString();
        assertThat(levels).as("levels of the headings of %s", where).matches("1[2-6]*");
        for (int i = 1; i < levels.length(); i++) {
            assertThat(levels.charAt(i) - levels.charAt(i - 1))
                    .as("heading %d of %s, levels %s", i + 1, where, levels)
                    .isLessThanOrEqualTo(1);
        }
    }

    private void fits(String where) {
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
