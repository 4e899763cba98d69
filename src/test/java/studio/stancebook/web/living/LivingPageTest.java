package studio.stancebook.web.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;

@StudioTest
class LivingPageTest {

    @Autowired
    private StudioClients clients;

    @ParameterizedTest
    @ValueSource(strings = {"/", "/living", "/living/question"})
    void isDrawnWithAllItsWords(String path) {
        HttpResponse<String> answer = clients.browser(Role.VIEWER).get(path);
        assertEquals(200, answer.statusCode());
        assertFalse(answer.body().contains("??"), "a message is missing on " + path);
        assertFalse(answer.body().contains("th:"), "a template attribute was left on " + path);
        assertTrue(answer.body().endsWith("</html>\n") || answer.body().endsWith("</html>"));
    }

    @Test
    void showsEveryVerdictInWordAndShape() {
        String page = clients.browser(Role.VIEWER).get("/living").body();
        for (String word : new String[] {
            "inside", "outside, low", "outside, high", "too close to call", "not measurable", "no band"
        }) {
            assertTrue(page.contains("<span class=\"verdict__word\">" + word + "</span>"), word);
        }
    }

    @Test
    void tiesWhatIsWrongToItsField() {
        String page = clients.browser(Role.VIEWER).get("/living").body();
        assertTrue(page.contains("href=\"#f-wrong-wheelbase\""));
        assertTrue(page.contains("aria-describedby=\"f-wrong-wheelbase-unit f-wrong-wheelbase-error\""));
        assertTrue(page.contains("value=\"27600\""));
    }

    @Test
    void sortsAndPages() {
        String page = clients.browser(Role.VIEWER).get("/living?sort=year,desc").body();
        assertTrue(page.contains("aria-sort=\"descending\""));
        assertTrue(page.indexOf("Tern") < page.indexOf("Curlew long"));
        assertTrue(page.contains("href=\"/living?sort=year,asc\""));
        assertTrue(page.contains("href=\"/living?sort=year,desc&amp;page=1\""));
    }

    @Test
    void isNotForStrangers() {
        HttpResponse<String> answer = clients.browser().get("/living");
        assertEquals(302, answer.statusCode());
    }
}
