package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.account.internal.NewPerson;
import studio.stancebook.account.internal.PersonService;

/** Whoever has a password that a lead set chooses their own first. */
@StudioTest
class OwnPasswordTest {

    private static final AtomicInteger MADE = new AtomicInteger();
    private static final String GIVEN = "given by the lead";
    private static final String OWN = "chosen by nobody else";

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    private String email = "";
    private long id;

    @BeforeEach
    void addSomebody() {
        email = "newcomer" + MADE.incrementAndGet() + "@studio.example";
        id = people.add(new NewPerson(email, "Come Lately", "lead", GIVEN)).id();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/account",
                "/studio/people",
                "/segments",
                "/proposals?page=2",
                "/no/such/page",
                "/v3/api-docs",
                "/swagger-ui.html",
                "/actuator/prometheus"
            })
    void everyPageLeadsToWhereItIsChosen(String page) {
        HttpResponse<String> answer = signedIn(GIVEN).get(page);

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/account/password"));
    }

    @Test
    void nothingElseIsChangedBeforeIt() {
        StudioBrowser newcomer = signedIn(GIVEN);

        HttpResponse<String> answer =
                newcomer.submit("/account/password", "/studio/people/" + id + "/password", Map.of("password", OWN));

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(studio.browser().trySigningIn(email, GIVEN).statusCode()).isEqualTo(302);
    }

    @Test
    void everythingIsOpenAfterIt() {
        StudioBrowser newcomer = signedIn(GIVEN);

        HttpResponse<String> again = choose(newcomer, GIVEN, GIVEN);
        HttpResponse<String> common = choose(newcomer, GIVEN, "password1234");
        HttpResponse<String> chosen = choose(newcomer, GIVEN, OWN);

        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("Choose your own password").contains("you have now");
        assertThat(common.statusCode()).isEqualTo(422);
        assertThat(common.body()).contains("most common");
        assertThat(chosen.statusCode()).isEqualTo(302);
        assertThat(newcomer.get("/studio/people").statusCode()).isEqualTo(200);
        assertThat(newcomer.get("/account/password").statusCode()).isEqualTo(302);
        assertThat(signedIn(OWN).get("/account").statusCode()).isEqualTo(200);
        token(OWN).expectStatus().isCreated();
    }

    @Test
    void noTokenIsMadeBeforeIt() {
        token(GIVEN)
                .expectStatus()
                .isForbidden()
                .expectHeader()
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .expectBody()
                .jsonPath("$.detail")
                .value(String.class, detail -> assertThat(detail).contains("choose your own first"));
    }

    @Test
    void aNewPasswordFromALeadAsksForItOnceMore() {
        StudioBrowser newcomer = signedIn(GIVEN);
        choose(newcomer, GIVEN, OWN);
        StudioBrowser lead = studio.browser(Role.LEAD);
        assertThat(row(lead)).doesNotContain("password change pending");

        lead.submit("/studio/people/" + id, "/studio/people/" + id + "/password", Map.of("password", GIVEN));

        assertThat(row(lead)).contains("password change pending");
        assertThat(signedIn(GIVEN).get("/").statusCode()).isEqualTo(302);
        token(GIVEN).expectStatus().isForbidden();
    }

    @ParameterizedTest
    @ValueSource(strings = {"password1234", "Come Lately 1"})
    void aLeadSetsNoPasswordThatAnybodyWouldTry(String password) {
        StudioBrowser lead = studio.browser(Role.LEAD);
        Map<String, String> person =
                Map.of("email", "new." + email, "displayName", "Come Lately", "role", "tutor", "password", password);

        HttpResponse<String> added = lead.submit("/studio/people/new", "/studio/people", person);
        HttpResponse<String> reset =
                lead.submit("/studio/people/" + id, "/studio/people/" + id + "/password", Map.of("password", password));

        assertThat(List.of(added.statusCode(), reset.statusCode())).containsOnly(422);
        assertThat(added.body()).contains("This password is ").doesNotContain(password);
        assertThat(reset.body()).contains("This password is ").doesNotContain(password);
    }

    @Test
    void oneCanSignOutWithoutIt() {
        StudioBrowser newcomer = signedIn(GIVEN);

        HttpResponse<String> left = newcomer.submit("/account/password", "/sign-out", Map.of());

        assertThat(left.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/sign-in?left"));
    }

    private StudioBrowser signedIn(String password) {
        StudioBrowser browser = studio.browser();
        browser.signIn(email, password);
        return browser;
    }

    private static HttpResponse<String> choose(StudioBrowser browser, String current, String wanted) {
        return browser.submit(
                "/account/password", "/account/password", Map.of("currentPassword", current, "newPassword", wanted));
    }

    private RestTestClient.ResponseSpec token(String password) {
        String credentials =
                Base64.getEncoder().encodeToString((email + ":" + password).getBytes(StandardCharsets.UTF_8));
        return studio.anonymous()
                .post()
                .uri("/api/v1/tokens")
                .header(HttpHeaders.AUTHORIZATION, "Basic " + credentials)
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of("name", "newcomer's"))
                .exchange();
    }

    private String row(StudioBrowser lead) {
        String page = lead.get("/studio/people?size=500").body();
        int at = page.indexOf(email);
        return page.substring(at, page.indexOf("</tr>", at));
    }
}
