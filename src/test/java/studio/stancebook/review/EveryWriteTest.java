package studio.stancebook.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;
import studio.stancebook.account.internal.TokenDesk;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Origin;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.review.internal.StoredLines;

/** Walks every call of the API that writes; one that is not written down here fails, and so does one that leaves no line. */
@StudioTest
class EveryWriteTest {

    /** Change nothing that is kept, or are carried out elsewhere. */
    private static final Map<String, String> WITHOUT_A_LINE = Map.of(
            "POST /api/v1/geometry/angles", "computes and keeps nothing",
            "POST /api/v1/tokens", "takes a password instead of a token; SignInDeedsTest and DeedsTest",
            "POST /api/v1/packages/imports", "takes a file; RecordPagesTest",
            "POST /api/v1/backups", "reads everything and changes nothing");

    @Autowired
    StudioClients studio;

    @Autowired
    StoredLines stored;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Proposals proposals;

    @Autowired
    TokenDesk tokens;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    RequestMappingHandlerMapping mappings;

    private final Set<String> walked = new LinkedHashSet<>();
    private String segment = "";
    private PackageView tern;
    private long sketch;

    @BeforeEach
    void make() {
        segment = Invented.key("every-write");
        segments.create(segment, "Segment of a test", "");
        PackageDraft plain = Invented.draft(segment, "Tern", 2850);
        tern = catalogue.add(
                new PackageDraft("Tern", segment, 2020, Origin.DRAWING, plain.dimensions(), List.of("Which tyres?")),
                "Tests");
        sketch = proposals
                .make(
                        new ProposalDraft(
                                "Sketch", segment, Invented.dimensions(2700).build(), ""),
                        studio.person(Role.LEAD))
                .id();
        studio.token(Role.LEAD);
    }

    private static final String DIMENSIONS = "{\"wheelbase\": 2900, \"frontTyreDiameter\": 700}";

    @Test
    void leavesALine() {
        String person = Invented.key("every-write") + "@studio.example";
        long made = studio.add(person, "Somebody", Role.VIEWER).personId();
        long token = tokens.issue(studio.person(Role.LEAD), "of every write").id();
        String ratio = Invented.key("every-ratio");
        String one = "/api/v1/packages/" + tern.id();
        String query = one + "/queries/" + tern.queries().get(0).id() + "/settlement";
        String band = "/api/v1/segments/" + segment + "/bands/wheelbase-in-wheels";

        walk("POST /api/v1/segments", "/api/v1/segments", "{\"key\": \"%s-b\", \"name\": \"B\"}".formatted(segment));
        walk(
                "PUT /api/v1/segments/{key}",
                "/api/v1/segments/" + segment,
                "{\"name\": \"Other\", \"description\": \"\"}");
        walk(
                "POST /api/v1/packages",
                "/api/v1/packages",
                "{\"name\": \"Gull\", \"segment\": \"%s\", \"dimensions\": %s}".formatted(segment, DIMENSIONS));
        walk(
                "PUT /api/v1/packages/{id}",
                one,
                "{\"name\": \"Tern\", \"segment\": \"%s\", \"dimensions\": %s}".formatted(segment, DIMENSIONS));
        walk("PUT /api/v1/packages/{id}/set-aside", one, "/set-aside", "{\"reason\": \"Loaded\"}");
        walk("DELETE /api/v1/packages/{id}/set-aside", one, "/set-aside", "");
        walk(
                "PUT /api/v1/packages/{id}/values/{value}/set-aside",
                one,
                "/values/wheelbase/set-aside",
                "{\"reason\": \"Rails\"}");
        walk("DELETE /api/v1/packages/{id}/values/{value}/set-aside", one, "/values/wheelbase/set-aside", "");
        walk("PUT /api/v1/packages/{id}/queries/{query}/settlement", query, "{\"answer\": \"The large ones.\"}");
        walk("DELETE /api/v1/packages/{id}/queries/{query}/settlement", query, "");
        walk("DELETE /api/v1/packages/{id}", one, "");
        walk(
                "PUT /api/v1/segments/{segment}/bands/{measure}",
                band,
                "{\"method\": \"rule\", \"lower\": 3, \"upper\": 4, \"reason\": \"Of a test\"}");
        walk(
                "POST /api/v1/proposals",
                "/api/v1/proposals",
                "{\"name\": \"Gull\", \"segment\": \"%s\", \"dimensions\": %s}".formatted(segment, DIMENSIONS));
        walk(
                "PUT /api/v1/proposals/{id}",
                "/api/v1/proposals/" + sketch,
                "{\"name\": \"Other\", \"segment\": \"%s\", \"stage\": \"for-review\"}".formatted(segment));
        walk(
                "POST /api/v1/proposals/{id}/revisions",
                "/api/v1/proposals/" + sketch,
                "/revisions",
                "{\"dimensions\": %s}".formatted(DIMENSIONS));
        walk(
                "POST /api/v1/measures",
                "/api/v1/measures",
                "{\"key\": \"%s\", \"name\": \"Of a test\", \"numerator\": [\"frontOverhang\"], \"denominator\": [\"wheelbase\"]}"
                        .formatted(ratio));
        walk("DELETE /api/v1/measures/{key}", "/api/v1/measures/" + ratio, "");
        walk(
                "POST /api/v1/people",
                "/api/v1/people",
                "{\"email\": \"b-%s\", \"displayName\": \"B\", \"role\": \"viewer\", \"password\": \"%s\"}"
                        .formatted(person, StudioClients.PASSWORD));
        walk(
                "PUT /api/v1/people/{id}",
                "/api/v1/people/" + made,
                "{\"displayName\": \"Other\", \"role\": \"viewer\", \"active\": true}");
        walk("DELETE /api/v1/tokens/{id}", "/api/v1/tokens/" + token, "");

        walked.addAll(WITHOUT_A_LINE.keySet());
        assertThat(mapped()).containsExactlyInAnyOrderElementsOf(walked);
    }

    private void walk(String route, String path, String body) {
        walk(route, path, "", body);
    }

    /** Sends what is accepted, made from the version of now, and looks for exactly one new line. */
    private void walk(String route, String thing, String rest, String body) {
        long before = stored.head().lineCount();
        HttpMethod method = HttpMethod.valueOf(route.substring(0, route.indexOf(' ')));
        Map<String, String> headers = new LinkedHashMap<>();
        String tag = studio.api(Role.LEAD)
                .get()
                .uri(thing)
                .exchange()
                .returnResult(String.class)
                .getResponseHeaders()
                .getETag();
        if (tag != null) {
            headers.put("If-Match", tag);
        }
        RestTestClient.RequestBodySpec request =
                studio.api(Role.LEAD).method(method).uri(thing + rest);
        headers.forEach(request::header);
        if (!body.isEmpty()) {
            request.contentType(MediaType.APPLICATION_JSON).body(body);
        }
        request.exchange().expectStatus().is2xxSuccessful();
        assertThat(stored.head().lineCount() - before).as(route).isEqualTo(1);
        walked.add(route);
    }

    private Set<String> mapped() {
        Set<String> routes = new TreeSet<>();
        mappings.getHandlerMethods()
                .keySet()
                .forEach(mapping -> mapping.getMethodsCondition().getMethods().stream()
                        .filter(method -> method != RequestMethod.GET)
                        .forEach(method -> mapping.getPatternValues().stream()
                                .filter(pattern -> pattern.startsWith("/api/"))
                                .forEach(pattern -> routes.add(method + " " + pattern))));
        return routes;
    }
}
