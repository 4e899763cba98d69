package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/** A designer's lead brings a table in and takes it out, in a real browser. */
@StudioTest
class BringInJourneyIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    private final String segment = "Journey " + UUID.randomUUID().toString().substring(0, 8);
    private BrowserVisit visit;

    @AfterEach
    void close() {
        visit.close();
    }

    private FilePayload table(int rows) {
        StringBuilder text = new StringBuilder("Vehicle;Class;L101 (in);Tyre;Body\n");
        for (int i = 0; i < rows; i++) {
            text.append("Invented ")
                    .append(i)
                    .append(';')
                    .append(segment)
                    .append(';')
                    .append(95 + i % 20);
            text.append(i == 2 ? ";145R12;x\n" : ";195/60R14;x\n");
        }
        text.append(";").append(segment).append(";100;195/60R14;x\n");
        return new FilePayload("cars.csv", "text/csv", text.toString().getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void goesFromAFileToTheCatalogueAndBackToAFile() throws IOException {
        Page page = signedIn(ColorScheme.LIGHT, 1280);

        send(page, table(3000));
        assertThat(page.getByLabel("What the column L101 (in) holds").inputValue())
                .isEqualTo("dimension:wheelbase");
        assertThat(page.getByLabel("What the column Body holds").inputValue()).isEmpty();
        page.getByLabel("Keep the good rows").check();
        page.getByLabel("Make segments that do not exist yet").check();
        page.getByRole(AriaRole.BUTTON, button("Check it")).click();

        page.getByText("3000 of the rows can be imported, 1 cannot").waitFor();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Import"))
                .click();
        page.getByText("packages are in the catalogue").waitFor();

        page.navigate(studio.address() + "/bring-in");
        page.getByLabel("Packages of")
                .selectOption(new com.microsoft.playwright.options.SelectOption().setLabel(segment));
        Download download = page.waitForDownload(
                () -> page.getByRole(AriaRole.BUTTON, button("CSV")).click());
        Path file = download.path();
        assertThat(Files.readAllLines(file)).hasSize(3001);
        assertThat(visit.complaints()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,360"})
    void meetsTheRulesOfAccessibilityOnEveryPage(ColorScheme scheme, int width) {
        Page page = signedIn(scheme, width);
        page.navigate(studio.address() + "/bring-in");
        check(page, "upload");

        send(page, table(3));
        check(page, "columns");
        page.getByLabel("What the column Class holds").selectOption("");
        page.getByRole(AriaRole.BUTTON, button("Check it")).click();
        page.getByRole(AriaRole.ALERT).waitFor();
        check(page, "columns refused");
        page.getByLabel("What the column Class holds").selectOption("field:segment");
        page.getByLabel("Make segments that do not exist yet").check();
        page.getByRole(AriaRole.BUTTON, button("Check it")).click();
        page.getByText("Nothing is imported while").waitFor();
        check(page, "report");

        page.navigate(studio.address() + "/bring-in");
        check(page, "upload with a file waiting");
    }

    private void send(Page page, FilePayload file) {
        page.navigate(studio.address() + "/bring-in");
        page.getByLabel("Table").setInputFiles(file);
        page.getByRole(AriaRole.BUTTON, button("Read the file")).click();
        page.getByLabel("What the column Class holds").waitFor();
    }

    private void check(Page page, String where) {
        visit.meetsTheRules(where);
    }

    private Page signedIn(ColorScheme scheme, int width) {
        SignedIn lead = studio.add(UUID.randomUUID() + "@studio.example", "Journey Lead", Role.LEAD);
        visit = BrowserVisit.of(lead, chromium, studio, scheme, width);
        return visit.page();
    }

    private static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }
}
