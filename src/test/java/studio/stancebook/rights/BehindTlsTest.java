package studio.stancebook.rights;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;

/** What a browser is told when TLS ends at a proxy, with the setting that docs/operations.md names for it. */
@StudioTest
@TestPropertySource(properties = "server.forward-headers-strategy=framework")
class BehindTlsTest {

    private static final Pattern MARK = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");

    @Autowired
    StudioClients studio;

    @Test
    void marksEveryCookieSecure() {
        HttpHeaders answer = signInOver("https");

        assertThat(answer.get(HttpHeaders.SET_COOKIE))
                .anySatisfy(cookie -> assertThat(cookie).startsWith("session="))
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

    private HttpHeaders signInOver(String scheme) {
        EntityExchangeResult<String> form = exchange(scheme, HttpMethod.GET, "", Map.of());
        Matcher mark = MARK.matcher(String.valueOf(form.getResponseBody()));
        assertThat(mark.find()).isTrue();
        String cookie = String.valueOf(form.getResponseHeaders().getFirst(HttpHeaders.SET_COOKIE));
        Map<String, String> fields = Map.of(
                "email",
                studio.person(Role.DESIGNER).email(),
                "password",
                StudioClients.PASSWORD,
                "_csrf",
                mark.group(1));
        EntityExchangeResult<String> answer =
                exchange(scheme, HttpMethod.POST, cookie.substring(0, cookie.indexOf(';')), fields);
        assertThat(answer.getStatus().value()).isEqualTo(302);
        return answer.getResponseHeaders();
    }

    private EntityExchangeResult<String> exchange(
            String scheme, HttpMethod method, String cookie, Map<String, String> fields) {
        return studio.anonymous()
                .method(method)
                .uri("/sign-in")
                .header("X-Forwarded-Proto", scheme)
                .header("X-Forwarded-Host", "studio.example")
                .header(HttpHeaders.COOKIE, cookie)
                .contentType(MediaType.APPLICATION_FORM_URLENCODED)
                .body(StudioBrowser.form(fields))
                .exchange()
                .expectBody(String.class)
                .returnResult();
    }
}
