package studio.stancebook.account;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** Adding and changing people through the API. */
abstract class PersonCallsTest {

    private static final AtomicInteger MADE = new AtomicInteger();

    @Autowired
    StudioClients studio;

    @Test
    void addsAPersonWhoCanSignIn() {
        String email = fresh();

        add(email.toUpperCase(java.util.Locale.ROOT), "Ada Farrow", "designer", StudioClients.PASSWORD)
                .expectStatus()
                .isCreated()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"0\"")
                .expectHeader()
                .valueMatches(HttpHeaders.LOCATION, "/api/v1/people/\\d+")
                .expectBody()
                .jsonPath("$.email")
                .isEqualTo(email)
                .jsonPath("$.role")
                .isEqualTo("designer")
                .jsonPath("$.active")
                .isEqualTo(true)
                .jsonPath("$.password")
                .doesNotExist();
        studio.browser().signIn(email, StudioClients.PASSWORD);
    }

    @Test
    void refusesAnAddressThatIsTaken() {
        String email = fresh();
        add(email, "First", "viewer", StudioClients.PASSWORD).expectStatus().isCreated();

        add(email.replace("person", "PERSON"), "Second", "viewer", StudioClients.PASSWORD)
                .expectStatus()
                .isEqualTo(409)
                .expectBody()
                .jsonPath("$.detail")
                .isEqualTo("There is a person with the address " + email + " already.");
    }

    @Test
    void namesEveryFieldThatCannotBeAccepted() {
        add("nowhere", " ", "boss", "short")
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors.length()")
                .isEqualTo(4)
                .jsonPath("$.errors[?(@.field=='email')]")
                .exists()
                .jsonPath("$.errors[?(@.field=='displayName')]")
                .exists()
                .jsonPath("$.errors[?(@.field=='role')]")
                .exists()
                .jsonPath("$.errors[?(@.field=='password')]")
                .exists();
    }

    @Test
    void changesAPersonWhoIsAsTheWriterBelieves() {
        long id = added();

        change(id, "\"0\"", "Renamed", "tutor", true)
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"1\"")
                .expectBody()
                .jsonPath("$.displayName")
                .isEqualTo("Renamed")
                .jsonPath("$.role")
                .isEqualTo("tutor");
        change(id, "\"0\"", "Again", "tutor", true).expectStatus().isEqualTo(412);
        change(id, "1", "Again", "tutor", true).expectStatus().isBadRequest();
        change(id, null, "Again", "tutor", true).expectStatus().isEqualTo(428);
    }

    @Test
    void doesNotKnowAPersonWhoIsNotThere() {
        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/people/987654321")
                .exchange()
                .expectStatus()
                .isNotFound();
        change(987654321, "\"0\"", "Nobody", "tutor", true).expectStatus().isNotFound();
    }

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "LEAD")
    void isForLeadsOnly(Role role) {
        RestTestClient client = studio.api(role);

        client.get().uri("/api/v1/people").exchange().expectStatus().isForbidden();
        client.post()
                .uri("/api/v1/people")
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of("email", fresh(), "displayName", "X", "role", "lead", "password", StudioClients.PASSWORD))
                .exchange()
                .expectStatus()
                .isForbidden()
                .expectHeader()
                .contentType(MediaType.APPLICATION_PROBLEM_JSON);
        client.put()
                .uri("/api/v1/people/1")
                .header(HttpHeaders.IF_MATCH, "\"0\"")
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of("displayName", "X", "role", "lead", "active", true))
                .exchange()
                .expectStatus()
                .isForbidden();
    }

    @Test
    void listsPeopleInPages() {
        added();
        added();

        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/people?size=1&page=1")
                .exchange()
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueMatches("Link", "</api/v1/people\\?page=0&size=1>; rel=\"first\", .*rel=\"prev\", .*rel=\"last\"")
                .expectBody()
                .jsonPath("$.items.length()")
                .isEqualTo(1)
                .jsonPath("$.page")
                .isEqualTo(1)
                .jsonPath("$.size")
                .isEqualTo(1)
                .jsonPath("$.total")
                .isNumber();
    }

    private RestTestClient.ResponseSpec add(String email, String name, String role, String password) {
        return studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/people")
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of("email", email, "displayName", name, "role", role, "password", password))
                .exchange();
    }

    private RestTestClient.ResponseSpec change(long id, String ifMatch, String name, String role, boolean active) {
        Map<String, Object> body = new LinkedHashMap<>(Map.of("displayName", name, "role", role, "active", active));
        return studio.api(Role.LEAD)
                .put()
                .uri("/api/v1/people/{id}", id)
                .headers(headers -> {
                    if (ifMatch != null) {
                        headers.set(HttpHeaders.IF_MATCH, ifMatch);
                    }
                })
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange();
    }

    private long added() {
        return studio.add(fresh(), "Somebody", Role.DESIGNER).personId();
    }

    private static String fresh() {
        return "person" + MADE.incrementAndGet() + "@studio.example";
    }
}
