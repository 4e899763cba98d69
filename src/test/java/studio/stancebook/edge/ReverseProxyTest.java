package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLSocket;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** The server behind HAProxy, with the configuration that docs/operations.md names. */
@AtTheEdge
class ReverseProxyTest {

    private static final String SIGN_IN = "GET /sign-in HTTP/1.1\r\nHost: studio.example\r\n";
    private static final String CLIENT = "127.0.2.7";
    private static final Pattern MARK = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");

    @TempDir
    static Path folder;

    private static HaProxy proxy;

    @Autowired
    StudioClients studio;

    @Autowired
    JdbcTemplate jdbc;

    @BeforeAll
    static void start(@LocalServerPort int port) throws IOException, InterruptedException, GeneralSecurityException {
        proxy = HaProxy.start(folder, port);
    }

    @AfterAll
    static void stop() {
        proxy.close();
    }

    @Test
    void speaksHttp2() throws IOException {
        try (SSLSocket connection = proxy.connect(CLIENT, "h2", "http/1.1")) {
            assertThat(connection.getApplicationProtocol()).isEqualTo("h2");
        }
    }

    @Test
    void sendsWhoeverComesWithoutTlsToTheSamePageWithIt() throws IOException {
        String answer = RawHttp.exchange(CLIENT, proxy.httpPort(), SIGN_IN + "Connection: close\r\n\r\n");

        assertThat(answer).startsWith("HTTP/1.1 308").contains("https://studio.example/sign-in");
    }

    @Test
    void signsInWithSecureCookiesAndTheClientsOwnAddressInTheRecord() throws IOException {
        String forged =
                "X-Forwarded-For: 192.0.2.66\r\nX-Forwarded-Host: elsewhere.example\r\nForwarded: for=192.0.2.66\r\n";
        String form = exchange(SIGN_IN + forged, "");
        Matcher mark = MARK.matcher(form);
        assertThat(mark.find()).isTrue();
        String cookie = BehindTlsTest.fields("Set-Cookie", form).get(0).split(";")[0];
        String body = StudioBrowser.form(Map.of(
                "email", studio.person(Role.TUTOR).email(),
                "password", StudioClients.PASSWORD,
                "_csrf", mark.group(1)));

        String answer = exchange(
                "POST /sign-in HTTP/1.1\r\nHost: studio.example\r\n" + forged + "Cookie: " + cookie
                        + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length()
                        + "\r\n",
                body);

        assertThat(answer).startsWith("HTTP/1.1 302");
        assertThat(BehindTlsTest.fields("Location", answer)).containsExactly("/");
        assertThat(BehindTlsTest.fields("Set-Cookie", answer))
                .anySatisfy(set -> assertThat(set).startsWith("__Host-session=").contains("Secure"));
        assertThat(recorded()).contains(CLIENT).doesNotContain("192.0.2.66").doesNotContain(AtTheEdge.PROXY);
    }

    @Test
    void keepsWhatIsForOperatorsWithin() throws IOException {
        assertThat(exchange("GET /actuator/prometheus HTTP/1.1\r\nHost: studio.example\r\n", ""))
                .startsWith("HTTP/1.1 404");
    }

    @Test
    void hangsUpOnHeadsAndBodiesThatComeSlowly() throws IOException {
        try (RawHttp head = RawHttp.over(proxy.connect(CLIENT, "http/1.1"));
                RawHttp body = RawHttp.over(proxy.connect(CLIENT, "http/1.1"))) {
            head.send(SIGN_IN + "X-Slow: ");
            body.send("POST /sign-in HTTP/1.1\r\nHost: studio.example\r\nContent-Length: 1000\r\n\r\nemail=");

            assertThat(head.readHead()).startsWith("HTTP/1.1 408");
            assertThat(body.readHead()).startsWith("HTTP/1.1 408");
        }
    }

    /** More than the 500 in ten seconds that the configuration lets an address begin. */
    @Test
    void refusesAFloodAndAnswersOthers() throws IOException {
        String flooder = "127.0.2.8";
        String answers = RawHttp.exchange(
                flooder, proxy.httpPort(), (SIGN_IN + "\r\n").repeat(600) + SIGN_IN + "Connection: close\r\n\r\n");

        assertThat(answers).contains("HTTP/1.1 308").contains("HTTP/1.1 429");
        assertThat(exchange(SIGN_IN, "")).startsWith("HTTP/1.1 200");
    }

    private String exchange(String head, String body) throws IOException {
        try (RawHttp connection = RawHttp.over(proxy.connect(CLIENT, "http/1.1"))) {
            return connection.send(head + "Connection: close\r\n\r\n" + body).readToTheEnd();
        }
    }

    private String recorded() {
        List<Map<String, Object>> lines = jdbc.queryForList("SELECT changes FROM activity_line");
        return lines.toString();
    }
}
