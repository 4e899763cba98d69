package studio.stancebook.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.ParameterizedTypeReference;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import org.springframework.test.web.servlet.client.RestTestClient;
import org.w3c.dom.NodeList;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.account.internal.NewToken;
import studio.stancebook.account.internal.TokenService;

/** Names, reasons and notes with markup in them: shown as the text they are, on every page and drawing. */
@StudioTest
@TestPropertySource(properties = "stancebook.hostile=names")
class PlantedNamesTest {

    private static final Map<String, Object> DIMENSIONS = Map.of(
            "wheelbase",
            2800,
            "overallHeight",
            1500,
            "overallLength",
            4700,
            "frontTyreDiameter",
            700,
            "rearTyreDiameter",
            700);

    private static final int FINE = 200;

    @Autowired
    StudioClients studio;

    @Autowired
    TokenService tokens;

    private int planted;

    @Test
    void areShownAsTheTextTheyAreEverywhere() throws Exception {
        List<String> texts = Stream.concat(
                        HostileText.MARKUP.stream(),
                        HostileText.LETTERS.stream().limit(4))
                .toList();
        texts.forEach(this::plant);

        Map<String, HttpResponse<String>> answers = Crawl.from(studio.browser(Role.LEAD), texts.size() + 2);

        StringBuilder read = new StringBuilder();
        for (Map.Entry<String, HttpResponse<String>> entry : answers.entrySet()) {
            HttpResponse<String> answer = entry.getValue();
            assertThat(answer.statusCode()).as(entry.getKey()).isLessThan(400);
            if (Crawl.isPage(answer)) {
                Document page = Jsoup.parse(answer.body());
                checkPage(entry.getKey(), page);
                read.append(page.wholeText());
            } else if (answer.headers().firstValue("Content-Type").orElse("").startsWith("image/svg")) {
                checkDrawing(entry.getKey(), answer.body());
            }
        }
        assertThat(answers).hasSizeGreaterThan(100);
        checkDrawings(answers.keySet());
        assertThat(texts).allSatisfy(text -> assertThat(read).contains(text));
    }

    private void checkDrawings(Set<String> paths) throws Exception {
        StudioBrowser browser = studio.browser(Role.LEAD);
        List<String> drawn = paths.stream()
                .filter(path -> path.matches("/(packages|proposals)/[0-9]+"))
                .toList();
        assertThat(drawn).hasSizeGreaterThan(20);
        for (String path : drawn) {
            HttpResponse<String> drawing = browser.get(path + "/drawing.svg");
            assertThat(drawing.statusCode()).as(path).isEqualTo(200);
            checkDrawing(path, drawing.body());
        }
    }

    private static void checkPage(String path, Document page) {
        for (Element element : page.getAllElements()) {
            assertThat(element.normalName()).as(path).doesNotContain("planted");
            assertThat(element.id()).as(path).isNotEqualTo("planted");
            assertThat(element.normalName().equals("script") && !element.hasAttr("src"))
                    .as(path)
                    .isFalse();
            for (Attribute attribute : element.attributes()) {
                assertThat(attribute.getKey()).as(path).doesNotStartWith("on").doesNotContain("planted");
                if (List.of("href", "src", "action").contains(attribute.getKey())) {
                    assertThat(attribute.getValue()).as(path).doesNotStartWith("javascript:");
                }
            }
        }
        assertThat(page.select("link, base, iframe, object, embed, meta[http-equiv]").stream()
                        .map(Element::outerHtml)
                        .filter(html -> html.contains("planted"))
                        .toList())
                .as(path)
                .isEmpty();
    }

    private static void checkDrawing(String path, String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        NodeList elements = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            assertThat(elements.item(i).getNodeName())
                    .as(path)
                    .doesNotContain("planted")
                    .isNotEqualTo("script");
            for (int a = 0; a < elements.item(i).getAttributes().getLength(); a++) {
                assertThat(elements.item(i).getAttributes().item(a).getNodeName())
                        .as(path)
                        .doesNotStartWith("on");
            }
        }
    }

    static Stream<String> neverAccepted() {
        return Stream.concat(
                HostileText.DIRECTION.stream(),
                Stream.of("x".repeat(10_000), "a\u0000b", "a\u001Bb", "a\u2028b", "a\uFFFEb", " "));
    }

    @ParameterizedTest
    @MethodSource("neverAccepted")
    void areRefusedIfTheyTurnTheDirectionOrAreNoText(String text) {
        String segment = "planted-" + Math.abs(text.hashCode());
        refused("/api/v1/segments", Map.of("key", segment, "name", text, "description", ""), "name");
        call("POST", "/api/v1/segments", "", Map.of("key", segment, "name", "Fine", "description", ""), FINE);
        refused(
                "/api/v1/packages",
                Map.of("name", text, "segment", segment, "origin", "specification", "dimensions", DIMENSIONS),
                "name");
        refused(
                "/api/v1/proposals",
                Map.of("name", text, "segment", segment, "note", "", "dimensions", DIMENSIONS),
                "name");
        refused(
                "/api/v1/people",
                Map.of(
                        "email", "p@studio.example",
                        "displayName", text,
                        "role", "viewer",
                        "password", "a long enough password"),
                "displayName");
        refused(
                "/api/v1/measures",
                Map.of(
                        "key",
                        "planted-ratio",
                        "name",
                        text,
                        "numerator",
                        List.of("wheelbase"),
                        "denominator",
                        List.of("overallLength")),
                "name");
    }

    private void refused(String path, Map<String, Object> body, String field) {
        EntityExchangeResult<Map<String, Object>> answer = call("POST", path, "", body, 422);
        assertThat(String.valueOf(answer.getResponseBody())).contains("field=" + field);
        assertThat(String.valueOf(answer.getResponseBody()))
                .hasSizeLessThan(1_000)
                .doesNotContain("\u202E");
    }

    /** One of everything that has words in it. */
    private void plant(String text) {
        String segment = "planted-s" + planted;
        call("POST", "/api/v1/segments", "", Map.of("key", segment, "name", text, "description", text), FINE);
        long first = addPackage(segment, text);
        long second = addPackage(segment, text + " 2");
        settle(segment, text);
        call(
                "PUT",
                "/api/v1/packages/" + first + "/set-aside",
                etag("/api/v1/packages/" + first),
                Map.of("reason", text),
                FINE);
        call(
                "PUT",
                "/api/v1/packages/" + second + "/values/wheelbase/set-aside",
                etag("/api/v1/packages/" + second),
                Map.of("reason", text),
                FINE);
        call(
                "PUT",
                "/api/v1/segments/" + segment + "/bands/wheelbase-in-wheels",
                "",
                Map.of("method", "rule", "lower", 3.4, "upper", 3.7, "reason", text),
                FINE);
        propose(segment, text);
        call(
                "POST",
                "/api/v1/people",
                "",
                Map.of(
                        "email",
                        "planted" + planted + "@studio.example",
                        "displayName",
                        text,
                        "role",
                        "designer",
                        "password",
                        "a long enough password"),
                FINE);
        call(
                "POST",
                "/api/v1/measures",
                "",
                Map.of(
                        "key",
                        "planted-r" + planted,
                        "name",
                        text,
                        "numerator",
                        List.of("wheelbase"),
                        "denominator",
                        List.of("overallLength")),
                FINE);
        tokens.issue(studio.person(Role.LEAD), NewToken.named(text));
        planted++;
    }

    private void propose(String segment, String text) {
        Object id = call(
                        "POST",
                        "/api/v1/proposals",
                        "",
                        Map.of("name", text, "segment", segment, "note", text, "dimensions", DIMENSIONS),
                        FINE)
                .getResponseBody()
                .get("id");
        Map<String, Object> longer = new HashMap<>(DIMENSIONS);
        longer.put("wheelbase", 2900);
        call(
                "POST",
                "/api/v1/proposals/" + id + "/revisions",
                etag("/api/v1/proposals/" + id),
                Map.of("note", text, "dimensions", longer),
                FINE);
    }

    private void settle(String segment, String text) {
        Map<String, Object> queries = call("GET", "/api/v1/segments/" + segment + "/queries", "", Map.of(), FINE)
                .getResponseBody();
        for (Object item : (List<?>) queries.get("items")) {
            Object packageId = ((Map<?, ?>) item).get("packageId");
            Object query = ((Map<?, ?>) ((Map<?, ?>) item).get("query")).get("id");
            call(
                    "PUT",
                    "/api/v1/packages/" + packageId + "/queries/" + query + "/settlement",
                    "",
                    Map.of("answer", text),
                    FINE);
        }
    }

    private long addPackage(String segment, String name) {
        Object id = call(
                        "POST",
                        "/api/v1/packages",
                        "",
                        Map.of("name", name, "segment", segment, "origin", "specification", "dimensions", DIMENSIONS),
                        FINE)
                .getResponseBody()
                .get("id");
        return ((Number) id).longValue();
    }

    private String etag(String path) {
        return String.valueOf(
                call("GET", path, "", Map.of(), FINE).getResponseHeaders().getETag());
    }

    private EntityExchangeResult<Map<String, Object>> call(
            String method, String path, String etag, Map<String, Object> body, int expected) {
        RestTestClient.RequestBodySpec request = studio.api(Role.LEAD)
                .method(HttpMethod.valueOf(method))
                .uri(path)
                .contentType(MediaType.APPLICATION_JSON);
        if (!etag.isEmpty()) {
            request.header(HttpHeaders.IF_MATCH, etag);
        }
        if (!method.equals("GET")) {
            request.body(body);
        }
        RestTestClient.ResponseSpec answer = request.exchange();
        if (expected == FINE) {
            answer.expectStatus().is2xxSuccessful();
        } else {
            answer.expectStatus().isEqualTo(expected);
        }
        return answer.expectBody(new ParameterizedTypeReference<Map<String, Object>>() {})
                .returnResult();
    }
}
