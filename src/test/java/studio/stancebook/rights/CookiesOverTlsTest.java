package studio.stancebook.rights;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** Cookies where TLS may end at a proxy: their names and marks, and that no session changes from one way to the other. */
@StudioTest
@TestPropertySource(properties = "stancebook.trusted-proxies=127.0.0.1")
class CookiesOverTlsTest {

    private static final Pattern MARK = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");

    @Autowired
    StudioClients studio;

    @Test
    void marksEveryCookieSecure() {
        HttpHeaders answer = signInOver("https");

        assertThat(answer.get(HttpHeaders.SET_COOKIE))
                .anySatisfy(cookie -> assertThat(cookie)
                        .startsWith("__Host-session=")
                        .contains("Path=/;")
                        .doesNotContain("Domain"))
                .filteredOn(cookie -> !cookie.contains("=;"))
                .allSatisfy(cookie -> assertThat(cookie)
                        .contains("Secure")
                        .contains("HttpOnly")
                        .contains("SameSite=Lax"));
    }

    @Test
    void tellsBrowsersToComeByTlsOnly() {
        assertThat(signInOver("https").get("Strict-Transport-Security"))
                .singleElement()
                .asString()
                .contains("max-age=31536000")
                .contains("includeSubDomains");
    }

    @Test
    void marksNoCookieSecureThatABrowserWouldNotSendBack() {
        HttpHeaders answer = signInOver("http");

        assertThat(answer.get(HttpHeaders.SET_COOKIE))
                .isNotEmpty()
                .allSatisfy(cookie -> assertThat(cookie).doesNotContain("Secure"));
        assertThat(answer.get("Strict-Transport-Security")).isNull();
    }

    @Test
    void keepsFormsToThisHost() {
        assertThat(exchange("https", HttpMethod.GET, "/sign-in", "", Map.of())
                        .getResponseHeaders()
                        .get(HttpHeaders.SET_COOKIE))
                .anySatisfy(cookie -> assertThat(cookie).startsWith("__Host-form-token="));
    }

    @ParameterizedTest
    @CsvSource({"http, session, https, __Host-session", "https, __Host-session, http, session"})
    void takesNoSessionThatBeganTheOtherWay(String began, String name, String other, String otherName) {
        String id = cookie(name, signInOver(began));

        assertThat(account(began, name + "=" + id)).isEqualTo(200);
        assertThat(account(other, name + "=" + id)).isEqualTo(302);
        assertThat(account(other, otherName + "=" + id)).isEqualTo(302);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sign-out", "/account/sign-ins/end"})
    void letsTheBrowserForgetWhatItSawAtSigningOutButNoOtherCookies(String action) {
        String session = "__Host-session=" + cookie("__Host-session", signInOver("https"));

        HttpHeaders answer = submit("https", action, session, Map.of());

        assertThat(answer.getFirst("Clear-Site-Data")).isEqualTo("\"cache\", \"storage\"");
        assertThat(answer.get(HttpHeaders.SET_COOKIE))
                .anySatisfy(cookie ->
                        assertThat(cookie).startsWith("__Host-session=;").contains("Max-Age=0"));
        assertThat(account("https", session)).isEqualTo(302);
    }

    private HttpHeaders signInOver(String scheme) {
        Map<String, String> fields =
                Map.of("email", studio.person(Role.DESIGNER).email(), "password", StudioClients.PASSWORD);
        return submit(scheme, "/sign-in", "", fields);
    }

    /** Sends a form with the mark that the sign-in page gives it. */
    private HttpHeaders submit(String scheme, String action, String session, Map<String, String> fields) {
        EntityExchangeResult<String> form = exchange(scheme, HttpMethod.GET, "/sign-in", "", Map.of());
        Matcher mark = MARK.matcher(String.valueOf(form.getResponseBody()));
        assertThat(mark.find()).isTrue();
        String formToken = String.valueOf(form.getResponseHeaders().getFirst(HttpHeaders.SET_COOKIE));
        Map<String, String> all = new HashMap<>(fields);
        all.put("_csrf", mark.group(1));
        EntityExchangeResult<String> answer = exchange(
                scheme, HttpMethod.POST, action, formToken.substring(0, formToken.indexOf(';')) + "; " + session, all);
        assertThat(answer.getStatus().value()).isEqualTo(302);
        return answer.getResponseHeaders();
    }

    private int account(String scheme, String session) {
        return exchange(scheme, HttpMethod.GET, "/account", session, Map.of())
                .getStatus()
                .value();
    }

    private static String cookie(String name, HttpHeaders answer) {
        return answer.getOrDefault(HttpHeaders.SET_COOKIE, List.of()).stream()
                .filter(cookie -> cookie.startsWith(name + "="))
                .map(cookie -> cookie.substring(name.length() + 1, cookie.indexOf(';')))
                .findFirst()
                .orElseThrow();
    }

    private EntityExchangeResult<String> exchange(
            String scheme, HttpMethod method, String path, String cookie, Map<String, String> fields) {
        return studio.anonymous()
                .method(method)
                .uri(path)
                .header("X-Forwarded-Proto", scheme)
                .header(HttpHeaders.COOKIE, cookie)
                .header(HttpHeaders.ACCEPT, "text/html")
                .contentType(MediaType.APPLICATION_FORM_URLENCODED)
                .body(StudioBrowser.form(fields))
                .exchange()
                .expectBody(String.class)
                .returnResult();
    }
}
