package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.NewToken;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.TokenScope;
import studio.stancebook.account.internal.TokenService;
import studio.stancebook.problem.ExpectedVersion;

/** Who may see what, and what browsers are told. */
@StudioTest
class AccessTest {

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    @Autowired
    TokenService tokens;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/account",
                "/studio/people",
                "/proposals",
                "/nothing/here",
                "/v3/api-docs",
                "/v3/api-docs.yaml",
                "/swagger-ui/index.html",
                "/swagger-ui.html",
                "/actuator",
                "/actuator/env",
                "/actuator/health/db",
                "/sign-in/refused",
                "/sign-in/",
                "//account",
                "/assets/../account",
                "/assets/%2e%2e/account"
            })
    void isClosedToWhoeverHasNotSignedIn(String path) {
        int status = studio.browser().get(path).statusCode();

        assertThat(status).isIn(302, 400);
    }

    @Test
    void sendsToTheSignInPageAsOftenAsOneComes() {
        StudioBrowser browser = studio.browser();
        browser.get("/proposals");
        HttpResponse<String> again = browser.get("/proposals");

        assertThat(again.statusCode()).isEqualTo(302);
        assertThat(again.headers().firstValue("Location").orElse("")).endsWith("/sign-in");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sign-in",
                "/actuator/health",
                "/actuator/health/liveness",
                "/actuator/health/readiness",
                "/webjars/htmx.org/dist/htmx.min.js"
            })
    void isOpenWhereOneComesIn(String path) {
        assertThat(studio.browser().get(path).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/api/v1/people", "/api/v1/nothing", "/api/v1/tokens", "/api/", "/api/v2/x"})
    void asksProgramsForAToken(String path) {
        studio.anonymous()
                .get()
                .uri(path)
                .exchange()
                .expectStatus()
                .isUnauthorized()
                .expectHeader()
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .expectHeader()
                .exists("WWW-Authenticate")
                .expectHeader()
                .exists("X-Request-Id")
                .expectHeader()
                .doesNotExist("Set-Cookie");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Bearer",
                "Bearer ",
                "Basic",
                "Basic !!!",
                "Basic ====",
                "Digest x",
                "",
                " ",
                "Bearer a b c",
                "garbage"
            })
    void answersGarbageForCredentialsWithARefusal(String header) {
        for (HttpMethod method : new HttpMethod[] {HttpMethod.GET, HttpMethod.POST}) {
            studio.anonymous()
                    .method(method)
                    .uri("/api/v1/tokens")
                    .header("Authorization", header)
                    .exchange()
                    .expectStatus()
                    .isUnauthorized();
        }
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void describesTheApiToEverybodySignedIn(Role role) {
        assertThat(studio.browser(role).get("/v3/api-docs").body())
                .contains("\"openapi\":\"3.")
                .contains("/api/v1/tokens");
        assertThat(studio.browser(role).get("/swagger-ui/index.html").statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @EnumSource(TokenScope.class)
    void describesTheApiToProgramsByTheirToken(TokenScope scope) {
        String token = tokens.issue(studio.person(Role.VIEWER), new NewToken("Description", scope.key(), null))
                .secret();
        for (String path : new String[] {"/v3/api-docs", "/v3/api-docs.yaml"}) {
            String body = new String(
                    studio.withToken(token)
                            .get()
                            .uri(path)
                            .exchange()
                            .expectStatus()
                            .isOk()
                            .expectHeader()
                            .doesNotExist("Set-Cookie")
                            .expectBody()
                            .returnResult()
                            .getResponseBodyContent(),
                    StandardCharsets.UTF_8);
            assertThat(body).contains("openapi").contains("/api/v1/tokens");
        }
    }

    @Test
    void refusesToDescribeTheApiByATokenThatIsNone() {
        studio.withToken("no-such-token")
                .get()
                .uri("/v3/api-docs")
                .exchange()
                .expectStatus()
                .isUnauthorized()
                .expectHeader()
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .expectHeader()
                .exists("WWW-Authenticate");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void showsThePeopleToLeadsOnly(Role role) {
        int expected = role == Role.LEAD ? 200 : 403;

        assertThat(studio.browser(role).get("/studio/people").statusCode()).isEqualTo(expected);
        studio.api(role).get().uri("/api/v1/people").exchange().expectStatus().isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "PATCH", "DELETE"})
    void letsViewersChangeNothingWhateverIsThere(String method) {
        studio.api(Role.VIEWER)
                .method(HttpMethod.valueOf(method))
                .uri("/api/v1/anything/at/all")
                .contentType(MediaType.APPLICATION_JSON)
                .body("{}")
                .exchange()
                .expectStatus()
                .isForbidden();
        studio.api(Role.DESIGNER)
                .method(HttpMethod.valueOf(method))
                .uri("/api/v1/anything/at/all")
                .contentType(MediaType.APPLICATION_JSON)
                .body("{}")
                .exchange()
                .expectStatus()
                .isNotFound();
    }

    @Test
    void letsViewersKeepTheirOwnTokens() {
        SignedIn viewer = studio.add("viewer.tokens@studio.example", "Viewer", Role.VIEWER);

        studio.anonymous()
                .post()
                .uri("/api/v1/tokens")
                .headers(h -> h.setBasicAuth(viewer.email(), StudioClients.PASSWORD))
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of("name", "reader"))
                .exchange()
                .expectStatus()
                .isCreated();
    }

    @Test
    void endsAtOnceForWhoeverIsDeactivated() {
        SignedIn person = studio.add("deactivated@studio.example", "Leaving", Role.DESIGNER);
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        assertThat(browser.get("/account").statusCode()).isEqualTo(200);

        people.change(person.personId(), new ExpectedVersion(0), new PersonChange("Leaving", "designer", false));

        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
        assertThat(studio.browser()
                        .trySigningIn(person.email(), StudioClients.PASSWORD)
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void followsAChangeOfRoleAtOnce() {
        SignedIn person = studio.add("promoted@studio.example", "Rising", Role.DESIGNER);
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        assertThat(browser.get("/studio/people").statusCode()).isEqualTo(403);

        people.change(person.personId(), new ExpectedVersion(0), new PersonChange("Rising", "lead", true));

        assertThat(browser.get("/studio/people").statusCode()).isEqualTo(200);
    }

    @Test
    void endsForWhoeverCameInWithAPasswordThatWasReset() {
        SignedIn person = studio.add("reset@studio.example", "Resetting", Role.DESIGNER);
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);

        people.resetPassword(person.personId(), "quite another password");

        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
        browser.signIn(person.email(), "quite another password");
        assertThat(browser.get("/account/password").statusCode()).isEqualTo(200);
    }

    @Test
    void signsOut() {
        StudioBrowser browser = studio.browser(Role.VIEWER);

        HttpResponse<String> out = browser.submit("/account", "/sign-out", Map.of());

        assertThat(out.statusCode()).isEqualTo(302);
        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
        assertThat(browser.get("/sign-in?left").body()).contains("signed out");
    }

    @Test
    void doesNotSignOutByALink() {
        StudioBrowser browser = studio.browser(Role.DESIGNER);

        browser.get("/sign-out");

        assertThat(browser.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void forbidsBrowsersEverythingForeignAndInline() {
        HttpResponse<String> page = studio.browser().get("/sign-in");

        assertThat(page.headers().allValues("Content-Security-Policy"))
                .containsExactly(
                        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self';"
                                + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
        assertThat(page.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(page.headers().firstValue("X-Frame-Options")).hasValue("DENY");
        assertThat(page.headers().firstValue("Cache-Control"))
                .hasValueSatisfying(v -> assertThat(v).contains("no-store"));
    }

    @Test
    void relaxesOnlyWhereTheApiIsDescribed() {
        HttpResponse<String> page = studio.browser(Role.DESIGNER).get("/swagger-ui/index.html");

        assertThat(page.headers().allValues("Content-Security-Policy"))
                .singleElement()
                .asString()
                .contains("style-src 'self' 'unsafe-inline'")
                .contains("script-src 'self';");
        assertThat(page.body()).doesNotContain("<script>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/actuator/sbom", "/actuator/sbom/application", "/META-INF/sbom/application.cdx.json"})
    void tellsNobodyWhichLibrariesItIsMadeOf(String path) {
        assertThat(studio.browser(Role.LEAD).get(path).statusCode()).isEqualTo(404);
        assertThat(studio.browser().get(path).statusCode()).isIn(302, 404);
    }

    @Test
    void keepsItsCookieFromScriptsAndOtherSites() {
        HttpResponse<String> page = studio.browser().get("/sign-in");

        assertThat(page.headers().firstValue("Set-Cookie"))
                .hasValueSatisfying(
                        cookie -> assertThat(cookie).contains("HttpOnly").contains("SameSite=Lax"));
    }

    @Test
    void sendsAPartOfAPageToTheSignInPageAsAWhole() {
        studio.anonymous()
                .get()
                .uri("/account")
                .header("HX-Request", "true")
                .exchange()
                .expectStatus()
                .isUnauthorized()
                .expectHeader()
                .valueEquals("HX-Redirect", "/sign-in");
    }
}
