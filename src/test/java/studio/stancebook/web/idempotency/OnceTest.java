package studio.stancebook.web.idempotency;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** Posts with an Idempotency-Key, tried on the call that adds a person. */
abstract class OnceTest {

    private static final AtomicInteger MADE = new AtomicInteger();

    @Autowired
    StudioClients studio;

    @Autowired
    JdbcClient jdbc;

    @Test
    void carriesOutTheSamePostOnceAndAnswersItTheSame() {
        String key = key();
        Map<String, String> person = person();

        var first = post(key, person)
                .expectStatus()
                .isCreated()
                .expectHeader()
                .doesNotExist("Idempotency-Replayed")
                .expectBody(String.class)
                .returnResult();
        var second = post(key, person)
                .expectStatus()
                .isCreated()
                .expectHeader()
                .valueEquals("Idempotency-Replayed", "true")
                .expectBody(String.class)
                .returnResult();

        assertThat(second.getResponseBody()).isEqualTo(first.getResponseBody());
        for (String header : List.of(HttpHeaders.LOCATION, HttpHeaders.ETAG, HttpHeaders.CONTENT_TYPE)) {
            assertThat(second.getResponseHeaders().get(header))
                    .isNotEmpty()
                    .isEqualTo(first.getResponseHeaders().get(header));
        }
        assertThat(second.getResponseHeaders().get(HttpHeaders.CONTENT_LENGTH)).hasSize(1);
    }

    @Test
    void refusesTheKeyForAnotherRequest() {
        String key = key();
        post(key, person()).expectStatus().isCreated();

        post(key, person())
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("Idempotency-Key");
    }

    @Test
    void keepsTheKeysOfPeopleApart() {
        String key = key();
        post(key, person()).expectStatus().isCreated();

        studio.api(Role.DESIGNER)
                .post()
                .uri("/api/v1/people")
                .header("Idempotency-Key", key)
                .contentType(MediaType.APPLICATION_JSON)
                .body(person())
                .exchange()
                .expectStatus()
                .isForbidden();
    }

    @Test
    void givesTheKeyBackWhenThePostWasRefused() {
        String key = key();
        Map<String, String> wrong =
                Map.of("email", "nowhere", "displayName", "X", "role", "viewer", "password", "short");

        post(key, wrong).expectStatus().isEqualTo(422);
        post(key, person()).expectStatus().isCreated();
    }

    @Test
    void carriesOutOneOfManyAtTheSameTime() {
        String key = key();
        Map<String, String> person = person();

        List<CompletableFuture<Integer>> answers = IntStream.range(0, 6)
                .mapToObj(i -> CompletableFuture.supplyAsync(() -> status(key, person)))
                .toList();

        assertThat(answers.stream().map(CompletableFuture::join).toList())
                .contains(201)
                .allMatch(s -> s == 201 || s == 409);
        assertThat(jdbc.sql("SELECT COUNT(*) FROM person WHERE email = :email")
                        .param("email", person.get("email"))
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void saysSoWhileTheFirstIsStillWorkedOn() {
        String key = key();
        Map<String, String> person = person();
        post(key, person).expectStatus().isCreated();
        jdbc.sql("UPDATE idempotent_answer SET status = NULL, body = NULL WHERE idempotency_key = :key")
                .param("key", key)
                .update();

        post(key, person)
                .expectStatus()
                .isEqualTo(409)
                .expectBody()
                .jsonPath("$.detail")
                .value(String.class, detail -> assertThat(detail).contains("still being worked on"));
    }

    @Test
    void forgetsAfterADay() {
        String key = key();
        post(key, person()).expectStatus().isCreated();
        jdbc.sql(
                        "UPDATE idempotent_answer SET claimed_at = claimed_at - INTERVAL '24' HOUR WHERE idempotency_key = :key")
                .param("key", key)
                .update();

        post(key, person()).expectStatus().isCreated();
    }

    @Test
    void takesKeysThatAHeaderCanHoldOnly() {
        post("has space", person()).expectStatus().isBadRequest();
        post("x".repeat(201), person()).expectStatus().isBadRequest();
        post("x".repeat(190) + key(), person()).expectStatus().isCreated();
    }

    @Test
    void saysThatFilesGoWithoutIt() {
        studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/people")
                .header("Idempotency-Key", key())
                .header("Content-Type", "multipart/form-data; boundary=x")
                .body("--x--")
                .exchange()
                .expectStatus()
                .isBadRequest()
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("Idempotency-Key");
    }

    private int status(String key, Map<String, String> person) {
        return post(key, person).returnResult(String.class).getStatus().value();
    }

    private RestTestClient.ResponseSpec post(String key, Map<String, String> person) {
        return studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/people")
                .header("Idempotency-Key", key)
                .contentType(MediaType.APPLICATION_JSON)
                .body(person)
                .exchange();
    }

    private static String key() {
        return "key-" + MADE.incrementAndGet();
    }

    private static Map<String, String> person() {
        return Map.of(
                "email",
                "once" + MADE.incrementAndGet() + "@studio.example",
                "displayName",
                "Örs Once",
                "role",
                "viewer",
                "password",
                StudioClients.PASSWORD);
    }
}
