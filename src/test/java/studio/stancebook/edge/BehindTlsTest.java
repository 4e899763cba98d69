package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** What a browser is told when TLS ends at a proxy, with the settings that docs/operations.md names for it. */
@AtTheEdge
class BehindTlsTest {

    private static final Pattern MARK = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");

    @LocalServerPort
    int port;

    @Autowired
    StudioClients studio;

    @Test
    void marksEveryCookieSecure() throws IOException {
        List<String> cookies = fields("Set-Cookie", signIn());

        assertThat(cookies)
                .anySatisfy(cookie -> assertThat(cookie).startsWith("__Host-session="))
                .filteredOn(cookie -> !cookie.contains("=;"))
                .allSatisfy(cookie -> assertThat(cookie)
                        .contains("Secure")
                        .contains("HttpOnly")
                        .contains("SameSite=Lax"));
    }

    @Test
    void tellsBrowsersToComeByTlsOnly() throws IOException {
        assertThat(fields("Strict-Transport-Security", signIn()))
                .singleElement()
                .asString()
                .contains("max-age=");
    }

    @Test
    void refusesOtherHostsAndNeverRepeatsThem() throws IOException {
        String answer = exchange("GET /sign-in HTTP/1.1\r\nHost: elsewhere.example\r\n", "");

        assertThat(answer).startsWith("HTTP/1.1 421").doesNotContain("elsewhere");
    }

    @Test
    void isToldWhetherTheServerIsWellByAnyHost() throws IOException {
        assertThat(exchange("GET /actuator/health/readiness HTTP/1.1\r\nHost: 10.0.0.7:8080\r\n", ""))
                .startsWith("HTTP/1.1 200");
    }

    private String signIn() throws IOException {
        String form = exchange("GET /sign-in HTTP/1.1\r\nHost: studio.example\r\n", "");
        Matcher mark = MARK.matcher(form);
        assertThat(mark.find()).isTrue();
        String cookie = fields("Set-Cookie", form).get(0).split(";")[0];
        String body = StudioBrowser.form(Map.of(
                "email", studio.person(Role.DESIGNER).email(),
                "password", StudioClients.PASSWORD,
                "_csrf", mark.group(1)));
        String answer = exchange(
                "POST /sign-in HTTP/1.1\r\nHost: studio.example\r\nCookie: " + cookie
                        + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length()
                        + "\r\n",
                body);
        assertThat(answer).startsWith("HTTP/1.1 302");
        assertThat(fields("Location", answer)).containsExactly("/");
        return answer;
    }

    private String exchange(String head, String body) throws IOException {
        return RawHttp.exchange(AtTheEdge.PROXY, port, head + "Connection: close\r\n\r\n" + body);
    }

    static List<String> fields(String name, String answer) {
        return answer.lines()
                .takeWhile(line -> !line.isEmpty())
                .filter(line -> line.regionMatches(true, 0, name + ": ", 0, name.length() + 2))
                .map(line -> line.substring(name.length() + 2))
                .toList();
    }
}
