package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.rights.Routes;

/** What a request says of the host gets into no answer, also where no public address is set. */
@StudioTest
class ForeignHostTest {

    private static final String FOREIGN = "elsewhere.example";

    @LocalServerPort
    int port;

    @Autowired
    StudioClients studio;

    @Autowired
    ApplicationContext context;

    @Test
    void isInNoAnswerToAStrangerOrALead() throws IOException {
        String session = studio.browser(Role.LEAD).cookie("session");
        String token = studio.token(Role.LEAD);
        List<String> paths = Routes.of(context).stream()
                .filter(route -> route.method().equals("GET"))
                .map(route -> route.path().replaceAll("\\{[^}]*}|\\*\\*?", "1"))
                .distinct()
                .toList();

        assertThat(paths).hasSizeGreaterThan(50);
        for (String path : paths) {
            assertForeignHostIsNowhereIn("GET " + path, "");
            assertForeignHostIsNowhereIn(
                    "GET " + path,
                    path.startsWith("/api/") ? "Authorization: Bearer " + token : "Cookie: session=" + session);
        }
    }

    @Test
    void isInNoLocationOfWhatWasMade() throws IOException {
        String body = "{\"key\": \"foreign-host\", \"name\": \"Foreign host\"}";
        String answer = assertForeignHostIsNowhereIn(
                "POST /api/v1/segments",
                "Authorization: Bearer " + studio.token(Role.LEAD)
                        + "\r\nContent-Type: application/json\r\nContent-Length: " + body.length(),
                body);

        assertThat(BehindTlsTest.fields("Location", answer)).containsExactly("/api/v1/segments/foreign-host");
    }

    private String assertForeignHostIsNowhereIn(String begin, String proof) throws IOException {
        return assertForeignHostIsNowhereIn(begin, proof, "");
    }

    private String assertForeignHostIsNowhereIn(String begin, String proof, String body) throws IOException {
        String answer = RawHttp.exchange(
                "127.0.0.1",
                port,
                begin + " HTTP/1.1\r\nHost: " + FOREIGN + "\r\nX-Forwarded-Host: " + FOREIGN
                        + "\r\nAccept: text/html,*/*\r\n" + (proof.isEmpty() ? "" : proof + "\r\n")
                        + "Connection: close\r\n\r\n" + body);
        assertThat(answer.toLowerCase(Locale.ROOT))
                .as(begin)
                .startsWith("http/1.1 ")
                .doesNotContain(FOREIGN);
        assertThat(BehindTlsTest.fields("Location", answer))
                .as(begin)
                .allSatisfy(location -> assertThat(location).startsWith("/"));
        return answer;
    }
}
