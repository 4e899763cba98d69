package studio.stancebook.web.styleguide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.drawing.strip.StripVerdict;

@StudioTest
class StyleGuidePageTest {

    private static final Path TEMPLATES = Path.of("src/main/resources/templates");
    private static final Pattern REFERENCE = Pattern.compile("~\\{([a-z/-]*) *:: *([a-z-]+)");
    private static final Pattern FRAGMENT = Pattern.compile("th:fragment=\"([a-z-]+)");

    @Autowired
    private StudioClients clients;

    @ParameterizedTest
    @ValueSource(strings = {"/", "/style-guide", "/style-guide/dimensions", "/style-guide/question"})
    void isDrawnWithAllItsWords(String path) {
        HttpResponse<String> answer = clients.browser(Role.VIEWER).get(path);
        assertEquals(200, answer.statusCode());
        assertFalse(answer.body().contains("??"), "a message is missing on " + path);
        assertFalse(answer.body().contains("th:"), "a template attribute was left on " + path);
        assertTrue(answer.body().endsWith("</html>\n") || answer.body().endsWith("</html>"));
    }

    @Test
    void showsEveryVerdictInWordAndShape() {
        String page = clients.browser(Role.VIEWER).get("/style-guide").body();
        for (String word : new String[] {
            "inside", "outside, low", "outside, high", "too close to call", "not measurable", "no band"
        }) {
            assertTrue(page.contains("<span class=\"verdict__word\">" + word + "</span>"), word);
        }
    }

    @Test
    void tiesWhatIsWrongToItsField() {
        String page = clients.browser(Role.VIEWER).get("/style-guide").body();
        assertTrue(page.contains("href=\"#f-wrong-wheelbase\""));
        assertTrue(page.contains("aria-describedby=\"f-wrong-wheelbase-unit f-wrong-wheelbase-error\""));
        assertTrue(page.contains("value=\"27600\""));
    }

    @Test
    void sortsAndPages() {
        String page =
                clients.browser(Role.VIEWER).get("/style-guide?sort=year,desc").body();
        assertTrue(page.contains("aria-sort=\"descending\""));
        assertTrue(page.indexOf("Tern") < page.indexOf("Curlew long"));
        assertTrue(page.contains("href=\"/style-guide?sort=year,asc\""));
        assertTrue(page.contains("href=\"/style-guide?sort=year,desc&amp;page=1\""));
    }

    /** Directly, or by a fragment that is there. */
    @Test
    void showsEveryFragmentThereIs() throws IOException {
        Set<String> shown = new TreeSet<>();
        Deque<Path> open = new ArrayDeque<>();
        open.add(Path.of("styleguide/style-guide"));
        open.add(Path.of("styleguide/dimensions"));
        open.add(Path.of("styleguide/question"));
        Set<Path> read = new HashSet<>();
        while (!open.isEmpty()) {
            Path template = open.remove();
            if (read.add(template)) {
                REFERENCE
                        .matcher(Files.readString(TEMPLATES.resolve(template + ".html")))
                        .results()
                        .forEach(reference -> {
                            Path named = reference.group(1).isEmpty() ? template : Path.of(reference.group(1));
                            shown.add(named + " :: " + reference.group(2));
                            open.add(named);
                        });
            }
        }
        Set<String> there = new TreeSet<>();
        try (Stream<Path> files = Files.list(TEMPLATES.resolve("fragments"))) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString().replace(".html", "");
                FRAGMENT.matcher(Files.readString(file).replaceAll("(?s)<!--.*?-->", ""))
                        .results()
                        .forEach(fragment -> there.add("fragments/" + name + " :: " + fragment.group(1)));
            }
        }
        assertTrue(there.size() > 40, "fragments are looked for in the wrong way");
        // It has no look of its own: it puts in what another template made.
        there.remove("fragments/cached :: cached");
        there.removeAll(shown);
        assertEquals(Set.of(), there, "put them on the style guide, in every state they can have");
    }

    @Test
    void drawsEveryStripAndStage() {
        String page = clients.browser(Role.VIEWER).get("/style-guide").body();
        for (StripVerdict verdict : StripVerdict.values()) {
            assertTrue(page.contains("class=\"band-strip band-strip--" + verdict.key() + "\""), verdict.key());
        }
        assertTrue(page.contains("band-strip__density"), "a class of 2,000");
        assertTrue(page.contains("band-strip__earlier"), "earlier revisions");
        for (String stage : List.of("bare", "landmarks", "lines", "sketch")) {
            assertTrue(page.contains("id=\"stage-" + stage + "-title\""), stage);
        }
    }

    @Test
    void isNotForStrangers() {
        HttpResponse<String> answer = clients.browser().get("/style-guide");
        assertEquals(302, answer.statusCode());
    }
}
