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
import studio.stancebook.access.Role;

@StudioTest
class UnitsChoiceTest {

    private static final String FORM = "/style-guide/dimensions";

    @Autowired
    private StudioClients clients;

    @Test
    void keepsTheUnitOfLengthsAndWhatAnglesAreReadFromEachForItself() {
        StudioBrowser browser = clients.browser(Role.LEAD);
        assertTrue(browser.get(FORM).body().contains("1000 to 6000 mm"));

        HttpResponse<String> answer = browser.submit(FORM, "/units", Map.of("length", "in", "back", FORM));
        assertEquals(303, answer.statusCode());
        assertEquals(FORM, answer.headers().firstValue("Location").orElseThrow());
        assertTrue(browser.get(FORM).body().contains("39.38 to 236.22 in"));
        assertTrue(browser.get(FORM).body().contains("Windscreen angle from the horizontal"));

        browser.submit(FORM, "/units", Map.of("angles", "vertical"));
        assertTrue(browser.get(FORM).body().contains("39.38 to 236.22 in"));
        assertTrue(browser.get(FORM).body().contains("Windscreen angle from the vertical"));

        browser.submit(FORM, "/units", Map.of("length", "mm"));
        browser.submit(FORM, "/units", Map.of("angles", "horizontal"));
        assertTrue(browser.get(FORM).body().contains("1000 to 6000 mm"));
    }

    @Test
    void refusesOtherUnitsAndSaysWhichThereAre() {
        HttpResponse<String> answer = clients.browser(Role.LEAD).submit("/", "/units", Map.of("length", "furlong"));
        assertEquals(400, answer.statusCode());
        assertTrue(answer.body().contains("furlong"));
        assertTrue(answer.body().contains("mm, in"));
    }

    @Test
    void asksNobodyWhoIsNotSignedIn() {
        assertFalse(clients.browser().get("/sign-in").body().contains("action=\"/units\""));
    }

    @Test
    void sendsNobodyElsewhere() {
        HttpResponse<String> answer = clients.browser(Role.LEAD)
                .submit("/", "/units", Map.of("length", "in", "back", "//elsewhere.example/"));
        assertEquals("/", answer.headers().firstValue("Location").orElseThrow());
    }
}
