package studio.stancebook.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;

@StudioTest
class AssetsTest {

    private static final Pattern STYLE = Pattern.compile("href=\"(/assets/css/main-[0-9a-f]{32}\\.css)\"");
    private static final Pattern SCRIPT = Pattern.compile("<script[^>]* src=\"([^\"]+)\"");
    private static final Pattern FACE =
            Pattern.compile("url\\(\"(/assets/fonts/overpass-[a-z0-9-]+-[0-9a-f]{32}\\.woff2)\"\\)");

    @Autowired
    private StudioClients clients;

    @Test
    void styleIsOneSheetUnderANameThatChangesWithItsContent() {
        HttpResponse<String> sheet = clients.browser().get(address(STYLE, page()));
        assertEquals(200, sheet.statusCode());
        assertFalse(sheet.body().contains("@import"));
        assertTrue(sheet.body().contains("@layer settings {"));
        assertTrue(sheet.body().contains("--film:"));
        assertKept(sheet);
    }

    @Test
    void facesComeFromHere() {
        StudioBrowser browser = clients.browser();
        String sheet = browser.get(address(STYLE, page())).body();
        List<String> faces =
                FACE.matcher(sheet).results().map(one -> one.group(1)).toList();
        assertEquals(4, faces.size());
        for (String face : faces) {
            HttpResponse<String> answer = browser.get(face);
            assertEquals(200, answer.statusCode());
            assertEquals("wOF2", answer.body().substring(0, 4));
            assertKept(answer);
        }
    }

    @Test
    void scriptsAreThereUnderNamesThatChangeWithTheirContent() {
        StudioBrowser browser = clients.browser();
        List<String> scripts =
                SCRIPT.matcher(page()).results().map(one -> one.group(1)).toList();
        assertEquals(4, scripts.size());
        for (String script : scripts) {
            assertTrue(script.matches(".*-[0-9a-f]{32}\\.js"), script);
            assertEquals(200, browser.get(script).statusCode());
        }
    }

    @Test
    void foldersListNothing() {
        StudioBrowser browser = clients.browser();
        for (String folder : List.of("/assets/", "/assets/css/", "/assets/js", "/webjars/", "/webjars/d3/")) {
            assertEquals(404, browser.get(folder).statusCode(), folder);
        }
    }

    private String page() {
        return clients.browser().get("/sign-in").body();
    }

    private static void assertKept(HttpResponse<String> answer) {
        assertEquals(
                "max-age=31536000, public, immutable",
                answer.headers().firstValue("Cache-Control").orElseThrow());
    }

    private static String address(Pattern pattern, String page) {
        return pattern.matcher(page)
                .results()
                .map((MatchResult one) -> one.group(1))
                .findFirst()
                .orElseThrow();
    }
}
