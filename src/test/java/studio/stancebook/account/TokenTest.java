package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.client.JsonPathAssertions;
import org.springframework.test.web.servlet.client.RestTestClient;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.TokenService;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.activity.ActivityRecord;
import studio.stancebook.activity.FieldChange;
import studio.stancebook.problem.ExpectedVersion;

/** The life of a token, from the password it is made with to its end. */
abstract class TokenTest {

    private static final AtomicInteger MADE = new AtomicInteger();

    private static final String ANGLES = """
            {"wheelbase": 2850, "front": {"centreHeight": 380, "radius": 380}, "rear": {"centreHeight": 380, "radius": 380}, "underbody": [[-850, 560], [3900, 560]]}
            """;

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    @Autowired
    TokenService tokens;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    ActivityRecord activity;

    @Test
    void isMadeWithAPasswordAndWorksUntilRevoked() {
        SignedIn owner = somebody(Role.DESIGNER);
        Made made = make(owner);

        RestTestClient client = studio.withToken(made.token());
        client.get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.items[0].id")
                .isEqualTo(made.id())
                .jsonPath("$.items[0].name")
                .isEqualTo("plotter")
                .jsonPath("$.total")
                .isEqualTo(1);
        client.delete()
                .uri("/api/v1/tokens/{id}", made.id())
                .exchange()
                .expectStatus()
                .isNoContent();
        client.get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isUnauthorized()
                .expectHeader()
                .valueEquals(HttpHeaders.WWW_AUTHENTICATE, "Bearer realm=\"stancebook\", error=\"invalid_token\"")
                .expectHeader()
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .expectBody()
                .jsonPath("$.type")
                .isEqualTo("/problems/unauthenticated")
                .jsonPath("$.status")
                .isEqualTo(401);
    }

    @Test
    void hasAtLeast256RandomBitsOfWhichOnlyAHashIsKept() {
        Made made = make(somebody(Role.DESIGNER));

        assertThat(made.token()).matches("sbk_[A-Za-z0-9_-]{43}");
        assertThat(jdbc.sql("SELECT token_hash FROM access_token")
                        .query(String.class)
                        .list())
                .allMatch(hash -> hash.matches("[0-9a-f]{64}"))
                .noneMatch(made.token()::contains);
    }

    /** The deactivation has revoked what there was and is not committed yet. */
    @Test
    void isNotMadeAtTheMomentOfADeactivation() throws Exception {
        SignedIn owner = somebody(Role.DESIGNER);
        ExecutorService program = Executors.newSingleThreadExecutor();
        try {
            Future<?> refused = transaction.execute(status -> {
                people.change(owner.personId(), new ExpectedVersion(0), new PersonChange("Away", "designer", false));
                Future<?> asked = program.submit(() -> post(owner.email(), StudioClients.PASSWORD)
                        .expectStatus()
                        .isForbidden());
                assertThatThrownBy(() -> asked.get(2, TimeUnit.SECONDS)).isInstanceOf(TimeoutException.class);
                return asked;
            });

            refused.get();
        } finally {
            program.shutdownNow();
        }
        assertThat(tokens.list(owner)).isEmpty();
    }

    @Test
    void isNotMadeWithAWrongPassword() {
        SignedIn owner = somebody(Role.DESIGNER);

        post(owner.email(), "not the password")
                .expectStatus()
                .isUnauthorized()
                .expectHeader()
                .valueEquals(HttpHeaders.WWW_AUTHENTICATE, "Basic realm=\"stancebook\", charset=\"UTF-8\"")
                .expectBody()
                .jsonPath("$.detail")
                .isEqualTo("No account here matches this e-mail address and password.");
    }

    @Test
    void isNotMadeWithAnotherToken() {
        studio.api(Role.DESIGNER)
                .post()
                .uri("/api/v1/tokens")
                .contentType(MediaType.APPLICATION_JSON)
                .body("{\"name\":\"second\"}")
                .exchange()
                .expectStatus()
                .isUnauthorized();
    }

    @Test
    void needsAName() {
        SignedIn owner = somebody(Role.DESIGNER);
        studio.anonymous()
                .post()
                .uri("/api/v1/tokens")
                .headers(h -> h.setBasicAuth(owner.email(), StudioClients.PASSWORD))
                .contentType(MediaType.APPLICATION_JSON)
                .body("{\"name\":\" \"}")
                .exchange()
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("name");
    }

    @Test
    void isTheOnlyWayIntoTheRestOfTheApi() {
        SignedIn owner = somebody(Role.LEAD);
        studio.anonymous()
                .get()
                .uri("/api/v1/people")
                .headers(h -> h.setBasicAuth(owner.email(), StudioClients.PASSWORD))
                .exchange()
                .expectStatus()
                .isUnauthorized();
        studio.anonymous()
                .get()
                .uri("/api/v1/people")
                .exchange()
                .expectStatus()
                .isUnauthorized()
                .expectHeader()
                .valueEquals(HttpHeaders.WWW_AUTHENTICATE, "Bearer realm=\"stancebook\"");
        assertThat(studio.browser(Role.LEAD).get("/api/v1/people").statusCode()).isEqualTo(401);
    }

    @Test
    void isRefusedOnceItsOwnerIsInactive() {
        SignedIn owner = somebody(Role.DESIGNER);
        Made made = make(owner);

        people.change(owner.personId(), new ExpectedVersion(0), new PersonChange("Gone", "designer", false));

        studio.withToken(made.token())
                .get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isUnauthorized();
        post(owner.email(), StudioClients.PASSWORD).expectStatus().isUnauthorized();
    }

    @Test
    void hasTheRightsItsOwnerHasNow() {
        SignedIn owner = somebody(Role.DESIGNER);
        RestTestClient client = studio.withToken(make(owner).token());

        client.get().uri("/api/v1/people").exchange().expectStatus().isForbidden();
        people.change(owner.personId(), new ExpectedVersion(0), new PersonChange("Up", "lead", true));
        client.get().uri("/api/v1/people").exchange().expectStatus().isOk();
    }

    @Test
    void isNobodyElsesToRevoke() {
        Made made = make(somebody(Role.DESIGNER));

        studio.api(Role.LEAD)
                .delete()
                .uri("/api/v1/tokens/{id}", made.id())
                .exchange()
                .expectStatus()
                .isNotFound();
        studio.withToken(made.token())
                .get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isOk();
    }

    @Test
    void notesItsUseOnceAMinute() {
        SignedIn owner = somebody(Role.DESIGNER);
        RestTestClient client = studio.withToken(make(owner).token());

        client.get().uri("/api/v1/tokens").exchange().expectStatus().isOk();
        var first = tokens.list(owner, PageRequest.of(0, 1)).getContent().get(0).lastUsedAt();
        client.get().uri("/api/v1/tokens").exchange().expectStatus().isOk();
        var second =
                tokens.list(owner, PageRequest.of(0, 1)).getContent().get(0).lastUsedAt();
        jdbc.sql("UPDATE access_token SET last_used_at = last_used_at - INTERVAL '61' SECOND WHERE person_id = :id")
                .param("id", owner.personId())
                .update();
        client.get().uri("/api/v1/tokens").exchange().expectStatus().isOk();
        var third = tokens.list(owner, PageRequest.of(0, 1)).getContent().get(0).lastUsedAt();

        assertThat(first).isNotNull().isEqualTo(second);
        assertThat(third).isAfterOrEqualTo(first);
    }

    @Test
    void writesAndExpiresAfterNinetyDaysUnlessSomethingElseIsAskedFor() {
        Made made = make(somebody(Role.DESIGNER));

        assertThat(made.scope()).isEqualTo("write");
        assertThat(made.expiresAt()).isCloseTo(Instant.now().plus(Duration.ofDays(90)), within(1, ChronoUnit.MINUTES));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 366})
    void expiresWhenItWasAskedTo(int days) {
        Made made = make(somebody(Role.DESIGNER), Map.of("name", "plotter", "expiresInDays", days));

        assertThat(made.expiresAt())
                .isCloseTo(Instant.now().plus(Duration.ofDays(days)), within(1, ChronoUnit.MINUTES));
    }

    @Test
    void isNotMadeForeverNorWithAScopeThatThereIsNot() {
        SignedIn owner = somebody(Role.DESIGNER);

        refusal(owner, Map.of("name", "plotter", "expiresInDays", 367)).isEqualTo("expiresInDays");
        refusal(owner, Map.of("name", "plotter", "expiresInDays", 0)).isEqualTo("expiresInDays");
        refusal(owner, Map.of("name", "plotter", "scope", "all")).isEqualTo("scope");
    }

    @Test
    void isRefusedOnceItHasExpired() {
        SignedIn owner = somebody(Role.DESIGNER);
        Made made = make(owner);
        RestTestClient client = studio.withToken(made.token());
        client.get().uri("/api/v1/tokens").exchange().expectStatus().isOk();

        jdbc.sql("UPDATE access_token SET created_at = created_at - INTERVAL '91' DAY,"
                        + " expires_at = expires_at - INTERVAL '90' DAY WHERE id = :id")
                .param("id", made.id())
                .update();

        client.get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isUnauthorized()
                .expectBody()
                .jsonPath("$.detail")
                .value(String.class, detail -> assertThat(detail).contains("expired at 20"));
    }

    @Test
    void readsAndCalculatesAndDoesNothingElseWithTheScopeRead() {
        SignedIn owner = somebody(Role.LEAD);
        Made made = make(owner, Map.of("name", "screen", "scope", "read"));
        RestTestClient client = studio.withToken(made.token());

        client.get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.items[0].scope")
                .isEqualTo("read");
        client.post()
                .uri("/api/v1/geometry/angles")
                .contentType(MediaType.APPLICATION_JSON)
                .body(ANGLES)
                .exchange()
                .expectStatus()
                .isOk();
        client.post()
                .uri("/api/v1/backups")
                .exchange()
                .expectStatus()
                .isForbidden()
                .expectBody()
                .jsonPath("$.detail")
                .isEqualTo("This token has the scope read, and this call takes one with the scope write.");
        client.delete()
                .uri("/api/v1/tokens/{id}", made.id())
                .exchange()
                .expectStatus()
                .isForbidden();
    }

    @Test
    void isGoneOnceItsOwnerWasInactiveForAWhile() {
        SignedIn owner = somebody(Role.DESIGNER);
        Made made = make(owner);

        people.change(owner.personId(), new ExpectedVersion(0), new PersonChange("Away", "designer", false));
        people.change(owner.personId(), new ExpectedVersion(1), new PersonChange("Back", "designer", true));

        studio.withToken(made.token())
                .get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isUnauthorized();
        assertThat(tokens.list(owner)).isEmpty();
        assertThat(changesOf(owner)).contains(new FieldChange("tokens revoked", null, "1"));
    }

    private List<FieldChange> changesOf(SignedIn person) {
        ActivityFilter filter = new ActivityFilter(null, "person", String.valueOf(person.personId()), null, null);
        return activity.list(filter, PageRequest.of(0, 20)).getContent().stream()
                .flatMap(line -> line.changes().stream())
                .toList();
    }

    record Made(String token, long id, String scope, Instant expiresAt) {}

    private SignedIn somebody(Role role) {
        return studio.add("tokens" + MADE.incrementAndGet() + "@studio.example", "Somebody", role);
    }

    private Made make(SignedIn owner) {
        return make(owner, Map.of("name", "plotter"));
    }

    private Made make(SignedIn owner, Map<String, ?> wish) {
        return post(owner.email(), StudioClients.PASSWORD, wish)
                .expectStatus()
                .isCreated()
                .expectBody(Made.class)
                .returnResult()
                .getResponseBody();
    }

    private JsonPathAssertions refusal(SignedIn owner, Map<String, ?> wish) {
        return post(owner.email(), StudioClients.PASSWORD, wish)
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field");
    }

    private RestTestClient.ResponseSpec post(String email, String password) {
        return post(email, password, Map.of("name", "plotter"));
    }

    private RestTestClient.ResponseSpec post(String email, String password, Map<String, ?> wish) {
        return studio.anonymous()
                .post()
                .uri("/api/v1/tokens")
                .headers(h -> h.setBasicAuth(email, password))
                .contentType(MediaType.APPLICATION_JSON)
                .body(wish)
                .exchange();
    }
}
