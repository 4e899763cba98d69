package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.CountedHashes;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.account.internal.NewPerson;
import studio.stancebook.account.internal.PersonService;

/** The limit on wrong passwords, attacked over HTTP. */
@StudioTest
class PasswordLimitTest {

    private static final AtomicInteger MADE = new AtomicInteger();
    private static final String A_QUARTER_OF_AN_HOUR = "8[4-9]\\d|900";
    private static final String WRONG = "not the password";

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    @Autowired
    CountedHashes hashes;

    @Autowired
    SignInAttempts attempts;

    @Autowired
    JdbcClient jdbc;

    private StudioBrowser browser;
    private RestTestClient program;

    /** All tests come from one address. */
    @AfterEach
    void forgetAttempts() {
        attempts.clear();
    }

    @BeforeEach
    void begin() {
        attempts.clear();
        browser = studio.browser();
        program = studio.anonymous();
    }

    @Test
    void refusesEvenTheRightPasswordAtTheFormAfterTenWrongOnes() {
        String email = somebody();

        assertThat(IntStream.range(0, 12).map(i -> byForm(email, WRONG).statusCode()))
                .containsExactly(403, 403, 403, 403, 403, 403, 403, 403, 403, 403, 429, 429);
        HttpResponse<String> right = byForm(email, StudioClients.PASSWORD);

        assertThat(right.statusCode()).isEqualTo(429);
        assertThat(right.headers().firstValue(HttpHeaders.RETRY_AFTER))
                .hasValueSatisfying(seconds -> assertThat(seconds).matches(A_QUARTER_OF_AN_HOUR));
        assertThat(right.body()).contains("Too many wrong passwords").contains("value=\"" + email + "\"");
        assertThat(recorded("sign-in", email)).isEqualTo(10);
    }

    @Test
    void countsTriesAtTheFormAndByBasicTogether() {
        String email = somebody();
        for (int i = 0; i < 5; i++) {
            assertThat(byForm(email, WRONG).statusCode()).isEqualTo(403);
            assertThat(byBasic(email, WRONG)).isEqualTo(401);
        }

        assertThat(byForm(email, StudioClients.PASSWORD).statusCode()).isEqualTo(429);
        basic(email, StudioClients.PASSWORD)
                .expectStatus()
                .isEqualTo(HttpStatus.TOO_MANY_REQUESTS)
                .expectHeader()
                .valueMatches(HttpHeaders.RETRY_AFTER, A_QUARTER_OF_AN_HOUR);
    }

    @Test
    void looksAtTenPasswordsOfAHundredThatComeAtOnce() throws Exception {
        String email = somebody();
        ExecutorService senders = Executors.newFixedThreadPool(20);
        try {
            List<Callable<Integer>> tries = IntStream.range(0, 100)
                    .<Callable<Integer>>mapToObj(i -> () -> byBasic(email, WRONG + i))
                    .toList();
            Map<Integer, Integer> answers = senders.invokeAll(tries).stream()
                    .collect(Collectors.toMap(PasswordLimitTest::answer, one -> 1, Integer::sum));

            assertThat(answers).containsExactlyInAnyOrderEntriesOf(Map.of(401, 10, 429, 90));
        } finally {
            senders.shutdownNow();
        }
    }

    @Test
    void countsTheCurrentPasswordWhereItIsChanged() {
        String email = somebody();
        browser.signIn(email, StudioClients.PASSWORD);

        for (int i = 0; i < 10; i++) {
            assertThat(change(WRONG).statusCode()).isEqualTo(422);
        }
        HttpResponse<String> right = change(StudioClients.PASSWORD);

        assertThat(right.statusCode()).isEqualTo(429);
        assertThat(right.headers().firstValue(HttpHeaders.RETRY_AFTER)).isPresent();
        assertThat(right.body()).contains("Too many wrong passwords");
        assertThat(byBasic(email, StudioClients.PASSWORD)).isEqualTo(429);
        assertThat(recorded("password", email)).isEqualTo(10);
    }

    @ParameterizedTest
    @MethodSource("wrongPasswords")
    void hashesOnceForAnybodyWhetherKnownOrNot(String wrong) {
        String known = somebody();

        assertThat(hashesFor(() -> byForm(known, wrong))).isEqualTo(1);
        assertThat(hashesFor(() -> byForm("nobody@studio.example", wrong))).isEqualTo(1);
        assertThat(hashesFor(() -> byBasic(known, wrong))).isEqualTo(1);
        assertThat(hashesFor(() -> byBasic("nobody@studio.example", wrong))).isEqualTo(1);
    }

    static List<String> wrongPasswords() {
        return List.of(WRONG, "short", "", "far too long ".repeat(100));
    }

    @Test
    void hashesNothingOnceThereWereTooMany() {
        String email = somebody();
        for (int i = 0; i < 10; i++) {
            byBasic(email, WRONG);
        }

        assertThat(hashesFor(() -> byForm(email, StudioClients.PASSWORD))).isZero();
        assertThat(hashesFor(() -> byBasic(email, StudioClients.PASSWORD))).isZero();
    }

    /** bcrypt reads 72 bytes. */
    @Test
    void takesNoPasswordForRightWhoseBeginningIs() {
        String email = "longest@studio.example";
        String longest = "x1".repeat(36);
        people.addWithOwnPassword(new NewPerson(email, "Long of password", "viewer", longest));

        assertThat(byForm(email, longest + "y").statusCode()).isEqualTo(403);
        assertThat(byForm(email, longest).statusCode()).isEqualTo(302);
    }

    @Test
    void keepsNothingOfEmailsThatAreTooLong() {
        for (int i = 0; i < 70; i++) {
            String email = "e".repeat(1_900_000) + i + "@studio.example";

            HttpResponse<String> answer = byForm(email, WRONG);

            assertThat(answer.statusCode()).isIn(403, 413);
            assertThat(answer.body()).hasSizeLessThan(100_000);
        }

        assertThat(attempts.size()).isZero();
        assertThat(byBasic("e".repeat(255), WRONG)).isEqualTo(401);
        assertThat(attempts.size()).isZero();
        assertThat(byBasic("e".repeat(254), WRONG)).isEqualTo(401);
        assertThat(attempts.size()).isEqualTo(3);
    }

    private int hashesFor(Runnable trying) {
        int before = hashes.compared();
        trying.run();
        return hashes.compared() - before;
    }

    private int recorded(String kind, String email) {
        return jdbc.sql("""
                        SELECT count(*) FROM activity_line JOIN person ON subject = CAST(person.id AS VARCHAR(20))
                        WHERE kind = :kind AND action = 'refused' AND email = :email""")
                .param("kind", kind)
                .param("email", email)
                .query(Integer.class)
                .single();
    }

    private String somebody() {
        String email = "limited" + MADE.incrementAndGet() + "@studio.example";
        studio.add(email, "Limited by tests", Role.DESIGNER);
        return email;
    }

    private HttpResponse<String> byForm(String email, String password) {
        return browser.trySigningIn(email, password);
    }

    private int byBasic(String email, String password) {
        return basic(email, password).returnResult(String.class).getStatus().value();
    }

    private RestTestClient.ResponseSpec basic(String email, String password) {
        String credentials =
                Base64.getEncoder().encodeToString((email + ":" + password).getBytes(StandardCharsets.UTF_8));
        return program.post()
                .uri("/api/v1/tokens")
                .header(HttpHeaders.AUTHORIZATION, "Basic " + credentials)
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of("name", "limited"))
                .exchange();
    }

    private HttpResponse<String> change(String current) {
        return browser.submit(
                "/account",
                "/account/password",
                Map.of("currentPassword", current, "newPassword", "another password of mine"));
    }

    private static int answer(Future<Integer> sent) {
        try {
            return sent.get();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }
}
