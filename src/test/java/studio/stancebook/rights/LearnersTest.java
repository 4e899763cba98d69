package studio.stancebook.rights;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;

/** A learner sees own work only, wherever one looks. */
@StudioTest
class LearnersTest {

    @Autowired
    ApplicationContext context;

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    private String segment = "";
    private String name = "";
    private long ofOther;

    @BeforeEach
    void makeWorkOfSomebodyElse() {
        segment = Invented.key("learners");
        name = Invented.name("Unseen dunlin");
        segments.create(segment, "Class for learners", "");
        ofOther = make(studio.token(Role.DESIGNER), name);
    }

    @Test
    void seesNoWorkOfOthersUnderAnyAddress() {
        Visitor learner = Visitor.of(studio, Role.LEARNER);
        List<Route> direct = Routes.of(context).stream()
                .filter(route -> route.path().contains("/proposals/{id}"))
                .toList();

        assertThat(direct).hasSizeGreaterThan(8).allSatisfy(route -> {
            HttpResponse<String> answer = learner.send(route, path(route));
            assertThat(answer.statusCode()).isEqualTo(404);
            assertThat(answer.body()).doesNotContain(name).doesNotContain(segment);
        });
    }

    private String path(Route route) {
        return route.path()
                .replace("{id}", Long.toString(ofOther))
                .replace("{number}", "1")
                .replaceAll("\\{[^}]+}", "no-such-thing");
    }

    @Test
    void findsNoWorkOfOthersInListsAndSearches() {
        Visitor learner = Visitor.of(studio, Role.LEARNER);
        Visitor viewer = Visitor.of(studio, Role.VIEWER);
        long designer = studio.person(Role.DESIGNER).personId();
        List<String> lists = List.of(
                "/proposals?size=500",
                "/proposals?size=500&owner=" + designer,
                "/proposals?size=500&segment=" + segment,
                "/api/v1/proposals?size=500",
                "/api/v1/proposals?size=500&owner=" + designer,
                "/api/v1/proposals?size=500&segment=" + segment);

        assertThat(lists).allSatisfy(list -> {
            assertThat(viewer.get(list).body()).contains(name);
            assertThat(learner.get(list).body()).doesNotContain(name);
        });
    }

    @Test
    void readsNoWorkOfOthersOnAnyPageThatIsTheSameForAll() {
        Visitor learner = Visitor.of(studio, Role.LEARNER);

        assertThat(Routes.of(context))
                .filteredOn(route -> route.reads()
                        && !route.path().contains("{")
                        && !route.path().contains("*"))
                .hasSizeGreaterThan(20)
                .allSatisfy(route ->
                        assertThat(learner.send(route, route.path()).body()).doesNotContain(name));
    }

    @Test
    void countsNoWorkOfOthers() {
        String fresh = studio.add(Invented.key("learner") + "@studio.example", "Fresh learner", Role.LEARNER)
                .email();
        StudioBrowser browser = studio.browser();
        browser.signIn(fresh, StudioClients.PASSWORD);

        assertThat(browser.get("/").body()).doesNotContain(name).doesNotContain("Unseen dunlin");
        assertThat(browser.get("/segments/" + segment).body()).doesNotContain(name);
    }

    @Test
    void seesOwnWork() {
        String own = Invented.name("Own wren");
        long id = make(studio.token(Role.LEARNER), own);
        Visitor learner = Visitor.of(studio, Role.LEARNER);

        assertThat(learner.get("/api/v1/proposals/" + id).body()).contains(own);
        assertThat(learner.get("/proposals/" + id).body()).contains(own);
        assertThat(learner.get("/proposals?size=500").body()).contains(own);
    }

    private long make(String token, String called) {
        Map<?, ?> made = studio.withToken(token)
                .post()
                .uri("/api/v1/proposals")
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of(
                        "name",
                        called,
                        "segment",
                        segment,
                        "note",
                        called,
                        "dimensions",
                        Map.of("wheelbase", 2800, "frontTyreDiameter", 700, "rearTyreDiameter", 700)))
                .exchange()
                .expectStatus()
                .isCreated()
                .expectBody(Map.class)
                .returnResult()
                .getResponseBody();
        return ((Number) made.get("id")).longValue();
    }
}
