package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.problem.ExpectedVersion;

/** A lead looks up who did what, in a real browser. */
@StudioTest
class RecordIT {

    private static Chromium chromium;

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private final List<String> complaints = new ArrayList<>();
    private BrowserContext context;
    private String segment = "";

    @BeforeAll
    static void start() {
        chromium = Chromium.start();
    }

    @AfterAll
    static void stop() {
        chromium.close();
    }

    @BeforeEach
    void leaveLines() {
        segment = Invented.key("looked-up");
        segments.create(segment, "Segment of a test", "");
        PackageView tern = catalogue.add(Invented.draft(segment, "Tern", 2850), "Tests");
        for (int i = 1; i <= 30; i++) {
            tern = catalogue.change(
                    tern.id(), new ExpectedVersion(tern.version()), Invented.draft(segment, "Tern", 2850 + i), "Tests");
        }
    }

    @AfterEach
    void close() {
        context.close();
        assertThat(complaints).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 360", "DARK, 360", "LIGHT, 1280", "DARK, 1280"})
    void meetsTheRulesOfAccessibilityAndFitsTheWindow(ColorScheme scheme, int width) {
        Page page = signedIn(new NewContextOptions().setColorScheme(scheme).setViewportSize(width, 900));
        for (String path : List.of(
                "/studio/record",
                "/studio/record?subject=no-such-thing",
                "/studio/record?from=yesterday",
                "/studio/record/verification")) {
            page.navigate(studio.address() + path);
            List<Rule> violations = new AxeBuilder(page).analyze().getViolations();
            assertThat(violations)
                    .as("%s, %s, %d px", path, scheme, width)
                    .extracting(
                            Rule::getId,
                            Rule::getHelp,
                            rule -> rule.getNodes().get(0).getHtml())
                    .isEmpty();
            assertThat(page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))
                    .as("%s fits %d px", path, width)
                    .isEqualTo(true);
        }
    }

    @Test
    void goesFromTheStudioToALineAndToAVerifiedChain() throws IOException {
        Page page = signedIn(new NewContextOptions().setViewportSize(1280, 900));
        page.navigate(studio.address() + "/studio");
        page.getByRole(AriaRole.LINK, named("To the activity record")).click();
        page.getByLabel("What kind of thing").selectOption("segment");
        page.getByLabel("Its id or key").fill(segment);
        page.getByRole(AriaRole.BUTTON, named("Show").setExact(true)).click();
        assertThat(page.locator("tbody tr").count()).isEqualTo(1);
        assertThat(page.locator("tbody").innerText()).contains("segment made", "Segment of a test");

        Download file = page.waitForDownload(
                () -> page.getByRole(AriaRole.LINK, named("Save as CSV")).click());
        assertThat(Files.readString(file.path())).contains("made,segment," + segment + ",");

        page.getByRole(AriaRole.LINK, named("Show all")).click();
        page.getByRole(AriaRole.LINK, named("Next")).click();
        assertThat(page.url()).contains("page=1");
        page.getByRole(AriaRole.LINK, named("Verify the chain")).click();
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("The activity record is whole: ");
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private Page signedIn(NewContextOptions options) {
        context = chromium.browser().newContext(options);
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("status of 4")) {
                complaints.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(complaints::add);
        page.navigate(studio.address() + "/sign-in");
        page.getByLabel("E-mail").fill(studio.person(Role.LEAD).email());
        page.getByLabel("Password").fill(StudioClients.PASSWORD);
        page.keyboard().press("Enter");
        page.waitForURL(studio.address() + "/");
        return page;
    }
}
