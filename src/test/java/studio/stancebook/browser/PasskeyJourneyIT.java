package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/**
 * A viewer adds a passkey and signs in with it, in a real browser with an authenticator of the browser's own making (Web
 * Authentication Level 3, 11, "User Agent Automation").
 */
@StudioTest
class PasskeyJourneyIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    private BrowserVisit visit;
    private Page page;
    private CDPSession devices;
    private String device;

    @BeforeEach
    void open() {
        visit = BrowserVisit.ofStranger(chromium, studio, ColorScheme.LIGHT, 1280);
        page = visit.page();
        devices = page.context().newCDPSession(page);
        devices.send("WebAuthn.enable");
        device = addDevice();
    }

    private String addDevice() {
        JsonObject options = new JsonObject();
        options.addProperty("protocol", "ctap2");
        options.addProperty("transport", "internal");
        options.addProperty("hasResidentKey", true);
        options.addProperty("hasUserVerification", true);
        options.addProperty("isUserVerified", true);
        JsonObject arguments = new JsonObject();
        arguments.add("options", options);
        return devices.send("WebAuthn.addVirtualAuthenticator", arguments)
                .get("authenticatorId")
                .getAsString();
    }

    private void userIsRecognised(boolean recognised) {
        JsonObject arguments = new JsonObject();
        arguments.addProperty("authenticatorId", device);
        arguments.addProperty("isUserVerified", recognised);
        devices.send("WebAuthn.setUserVerified", arguments);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    @Test
    void addsAPasskeySignsInWithItAndRemovesIt() {
        SignedIn viewer = studio.add("passkey.journey@studio.example", "Passkey Journey", Role.VIEWER);
        visit.signIn(viewer);
        addPasskey("A laptop");
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("The passkey is added");
        addPasskey("The same laptop");
        assertThat(page.getByRole(AriaRole.ALERT).innerText()).contains("has a passkey of yours");
        visit.meetsTheRulesThroughout("a passkey that is there already");
        visit.open("/account");
        visit.meetsTheRulesThroughout("the account with a passkey");
        visit.open("/account/confirm?back=/account/tokens/new");
        visit.meetsTheRulesThroughout("a confirmation by passkey");
        page.getByRole(AriaRole.BUTTON, button("Confirm with a passkey")).click();
        page.waitForURL(studio.address() + "/account/tokens/new");

        page.context().clearCookies();
        page.navigate(studio.address() + "/proposals?page=0");
        visit.meetsTheRulesThroughout("the sign-in page with a passkey");
        page.getByRole(AriaRole.BUTTON, button("Sign in with a passkey")).click();
        page.waitForURL(studio.address() + "/proposals?page=0");

        visit.open("/account");
        assertThat(page.getByRole(AriaRole.ROW, row("A laptop")).innerText()).doesNotContain("never");
        page.getByRole(AriaRole.BUTTON, button("Remove the passkey A laptop")).click();
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("The passkey is removed");

        page.context().clearCookies();
        visit.open("/sign-in");
        page.getByRole(AriaRole.BUTTON, button("Sign in with a passkey")).click();
        page.getByText("That passkey was not accepted").waitFor();
        assertThat(visit.complaints()).isEmpty();
    }

    @Test
    void saysWhatIsWrongAndLetsOneTryAgain() {
        visit.signIn(studio.person(Role.VIEWER));
        addPasskey(" ");
        page.getByText("Write a label.").first().waitFor();
        userIsRecognised(false);
        addPasskey("A laptop");
        page.getByText("the question of the browser was closed").waitFor();

        userIsRecognised(true);
        page.getByRole(AriaRole.BUTTON, button("Add a passkey")).click();
        page.getByText("The passkey is added").waitFor();
        assertThat(visit.complaints()).isEmpty();
    }

    @Test
    void offersNoPasskeyAtAnAddressWhereItWouldNotWork() {
        page.navigate(studio.address().replace("localhost", "127.0.0.1") + "/sign-in");

        assertThat(page.getByText("Passkeys work at " + studio.address() + " only")
                        .isVisible())
                .isTrue();
        assertThat(page.getByRole(AriaRole.BUTTON).allInnerTexts()).doesNotContain("Sign in with a passkey");
    }

    @Test
    void leavesThePasswordAloneWithoutScript() {
        try (BrowserVisit plain = BrowserVisit.of(
                studio.person(Role.VIEWER), chromium, studio, new NewContextOptions().setJavaScriptEnabled(false))) {
            plain.open("/account/passkeys/new");

            assertThat(plain.page().getByText("takes JavaScript").isVisible()).isTrue();
            assertThat(plain.page().getByRole(AriaRole.BUTTON).allInnerTexts()).doesNotContain("Add a passkey");
            plain.open("/account");
            assertThat(plain.page().getByRole(AriaRole.BUTTON).allInnerTexts()).contains("Change password");
        }
    }

    private void addPasskey(String label) {
        visit.open("/account/passkeys/new");
        page.getByLabel("Label").fill(label);
        page.getByRole(AriaRole.BUTTON, button("Add a passkey")).click();
        page.locator("[role=status]:visible, [role=alert]:visible").first().waitFor();
    }

    private static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }

    private static Page.GetByRoleOptions row(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }
}
