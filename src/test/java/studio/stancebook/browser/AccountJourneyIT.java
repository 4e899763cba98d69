package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.NewPerson;
import studio.stancebook.account.internal.PersonService;

/** A lead comes in, adds somebody, makes a token and looks at the API, in a real browser. */
@StudioTest
class AccountJourneyIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    private BrowserVisit visit;

    @AfterEach
    void close() {
        visit.close();
    }

    @Test
    void goesFromTheWantedPageThroughSigningInToAToken() {
        SignedIn lead = studio.add("journey@studio.example", "Journey Lead", Role.LEAD);
        Page page = page(ColorScheme.LIGHT, 1280);

        page.navigate(studio.address() + "/studio/people");
        page.getByLabel("E-mail").fill(lead.email());
        page.getByLabel("Password").fill("not the password");
        page.keyboard().press("Enter");
        assertThat(page.getByRole(AriaRole.ALERT).innerText()).contains("No account here matches");
        assertThat(page.getByLabel("E-mail").inputValue()).isEqualTo(lead.email());
        page.getByLabel("Password").fill(StudioClients.PASSWORD);
        page.keyboard().press("Enter");
        page.waitForURL(studio.address() + "/studio/people");

        page.getByRole(AriaRole.LINK, link("Add a person")).click();
        page.getByLabel("Name").fill("Added In Browser");
        page.getByLabel("E-mail").fill("added.in.browser@studio.example");
        page.getByLabel("Role").selectOption("tutor");
        page.getByLabel("First password").fill(StudioClients.PASSWORD);
        page.getByRole(AriaRole.BUTTON, button("Add a person")).click();
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("Added In Browser is added");

        page.navigate(studio.address() + "/account");
        page.getByRole(AriaRole.LINK, link("Make a token")).click();
        page.getByLabel("Name").fill("plotter");
        page.getByLabel("read and write").check();
        page.getByLabel("Expires after").selectOption("30");
        page.getByRole(AriaRole.BUTTON, button("Make a token")).click();
        String token = page.locator("code").innerText();
        studio.withToken(token)
                .get()
                .uri("/api/v1/people")
                .exchange()
                .expectStatus()
                .isOk();
        page.navigate(studio.address() + "/account");
        assertThat(page.getByRole(AriaRole.ROW, row("plotter")).innerText()).contains("read and write");
        page.getByRole(AriaRole.BUTTON, button("Revoke the token plotter")).click();
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("revoked");
        assertThat(visit.complaints()).isEmpty();
    }

    @Test
    void choosesAPasswordInPlaceOfTheOneThatALeadSet() {
        String email = "given.in.browser@studio.example";
        people.add(new NewPerson(email, "Given In Browser", "tutor", "given by the lead"));
        Page page = page(ColorScheme.LIGHT, 1280);

        page.navigate(studio.address() + "/segments");
        page.getByLabel("E-mail").fill(email);
        page.getByLabel("Password").fill("given by the lead");
        page.keyboard().press("Enter");
        page.waitForURL(studio.address() + "/account/password");
        visit.meetsTheRulesThroughout("/account/password");
        page.getByLabel("The password you were given").fill("given by the lead");
        page.getByLabel("New password").fill("password1234");
        page.keyboard().press("Enter");
        assertThat(page.getByRole(AriaRole.ALERT).innerText()).contains("most common");
        page.getByLabel("The password you were given").fill("given by the lead");
        page.getByLabel("New password").fill("chosen by nobody else");
        page.keyboard().press("Enter");
        page.waitForURL(studio.address() + "/");

        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("Your password is changed");
        assertThat(visit.complaints()).isEmpty();
    }

    @Test
    void readsTheDescriptionOfTheApi() {
        Page page = signedIn(ColorScheme.LIGHT, 1280);

        page.navigate(studio.address() + "/swagger-ui.html");
        Locator call = page.getByText("/api/v1/tokens").first();
        call.waitFor();

        assertThat(page.title()).isEqualTo("Swagger UI");
        assertThat(visit.complaints()).isEmpty();
    }

    private Page signedIn(ColorScheme scheme, int width) {
        visit = BrowserVisit.of(studio.person(Role.LEAD), chromium, studio, scheme, width);
        return visit.page();
    }

    private Page page(ColorScheme scheme, int width) {
        visit = BrowserVisit.ofStranger(chromium, studio, scheme, width);
        return visit.page();
    }

    private static Page.GetByRoleOptions link(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static Page.GetByRoleOptions row(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }
}
