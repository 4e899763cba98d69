package studio.stancebook.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;

@StudioTest
class ThemeChoiceTest {

    @Autowired
    private StudioClients clients;

    @Test
    void keepsTheThemeOfWhoeverIsNotSignedInYet() {
        StudioBrowser browser = clients.browser();
        assertFalse(browser.get("/sign-in").body().contains("data-theme"));
        HttpResponse<String> answer = browser.submit("/sign-in", "/theme", Map.of("theme", "dark", "back", "/sign-in"));
        assertEquals(303, answer.statusCode());
        assertEquals("/sign-in", answer.headers().firstValue("Location").orElseThrow());
        assertTrue(browser.get("/sign-in").body().contains("data-theme=\"dark\""));
    }

    @Test
    void goesBackToTheSystemsThemeByForgetting() {
        StudioBrowser browser = clients.browser();
        browser.submit("/sign-in", "/theme", Map.of("theme", "light"));
        browser.submit("/sign-in", "/theme", Map.of("theme", "system"));
        assertFalse(browser.get("/sign-in").body().contains("data-theme"));
    }

    @Test
    void refusesOtherThemesAndSaysWhichThereAre() {
        HttpResponse<String> answer = clients.browser().submit("/sign-in", "/theme", Map.of("theme", "sepia"));
        assertEquals(400, answer.statusCode());
        assertTrue(answer.body().contains("sepia"));
        assertTrue(answer.body().contains("system, light, dark"));
    }

    @Test
    void sendsNobodyElsewhere() {
        HttpResponse<String> answer =
                clients.browser().submit("/sign-in", "/theme", Map.of("theme", "dark", "back", "//elsewhere.example/"));
        assertEquals("/", answer.headers().firstValue("Location").orElseThrow());
    }
}
