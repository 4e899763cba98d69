package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.problem.ExpectedVersion;

/** A lead looks up who did what, in a real browser. */
@StudioTest
class RecordIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private BrowserVisit visit;
    private String segment = "";

    @BeforeEach
    void leaveLines() {
        segment = Invented.key("looked-up");
        segments.create(segment, "Segment of a test", "");
        PackageView tern = catalogue.add(Invented.draft(segment, "Tern", 2850), new Author(null, "Tests"));
        for (int i = 1; i <= 30; i++) {
            tern = catalogue.change(
                    tern.id(),
                    new ExpectedVersion(tern.version()),
                    Invented.draft(segment, "Tern", 2850 + i),
                    new Author(null, "Tests"));
        }
    }

    @AfterEach
    void close() {
        visit.close();
        assertThat(visit.complaints()).isEmpty();
    }

    @Test
    void goesFromTheStudioToALineAndToAVerifiedChain() throws IOException {
        visit = BrowserVisit.of(studio.person(Role.LEAD), chromium, studio, ColorScheme.LIGHT, 1280);
        Page page = visit.open("/studio");
        page.getByRole(AriaRole.LINK, named("Open the activity record")).click();
        page.getByLabel("What kind of thing").selectOption("segment");
        page.getByLabel("Its id or key").fill(segment);
        page.getByRole(AriaRole.BUTTON, named("Show").setExact(true)).click();
        assertThat(page.locator("tbody tr").count()).isEqualTo(1);
        assertThat(page.locator("tbody").innerText()).contains("segment made", "Segment of a test");

        Download file = page.waitForDownload(
                () -> page.getByRole(AriaRole.LINK, named("Download CSV")).click());
        assertThat(Files.readString(file.path())).contains("made,segment," + segment + ",");

        page.getByRole(AriaRole.LINK, named("Show all")).click();
        page.getByRole(AriaRole.LINK, named("Next")).click();
        assertThat(page.url()).contains("page=1");
        page.getByRole(AriaRole.LINK, named("Verify the record")).click();
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("The activity record is whole: ");
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }
}
