package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServer;
import org.springframework.util.unit.DataSize;

/** What the container makes of forwarded headers and of many connections, with a servlet alone behind it. */
class EdgeConfigurationTest {

    private static final int CONNECTIONS = 5;

    private static WebServer server;

    private static final class Echo extends HttpServlet {
        private static final long serialVersionUID = 1L;

        @Override
        protected void doGet(HttpServletRequest request, HttpServletResponse response) throws IOException {
            response.getWriter()
                    .print(request.getRequestURL() + " " + request.isSecure() + " " + request.getRemoteAddr());
        }
    }

    @BeforeAll
    static void start() {
        TomcatServletWebServerFactory factory = new TomcatServletWebServerFactory(0);
        LimitSettings limits =
                new LimitSettings(CONNECTIONS, 5, 1_000, Duration.ofSeconds(5), DataSize.ofKilobytes(16));
        new EdgeConfiguration()
                .edge(limits, new ProxySettings(List.of("127.0.0.9", "127.0.9.0/24")), new PublicUrl(null))
                .customize(factory);
        server = factory.getWebServer(
                context -> context.addServlet("echo", new Echo()).addMapping("/"));
        server.start();
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    /** What is told of the client, by the address that it comes from and the headers that it sends. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "127.0.0.1 | X-Forwarded-For: 192.0.2.1 | http://127.0.0.1:PORT/ false 127.0.0.1",
                "127.0.0.1 | X-Forwarded-Proto: https | http://127.0.0.1:PORT/ false 127.0.0.1",
                "127.0.0.1 | X-Forwarded-Host: elsewhere.example | http://127.0.0.1:PORT/ false 127.0.0.1",
                "127.0.0.1 | Forwarded: for=192.0.2.1;host=elsewhere.example | http://127.0.0.1:PORT/ false 127.0.0.1",
                "127.0.0.9 | X-Forwarded-For: 192.0.2.1 | http://127.0.0.1:PORT/ false 192.0.2.1",
                "127.0.9.1 | X-Forwarded-For: 192.0.2.1 | http://127.0.0.1:PORT/ false 192.0.2.1",
                "127.0.0.9 | X-Forwarded-For: 203.0.113.5, 192.0.2.1 | http://127.0.0.1:PORT/ false 192.0.2.1",
                "127.0.0.9 | X-Forwarded-For: 203.0.113.5, 192.0.2.1, 127.0.9.3 | http://127.0.0.1:PORT/ false 192.0.2.1",
                "127.0.0.9 | X-Forwarded-For: 192.0.2.1~X-Forwarded-Proto: https~X-Forwarded-Host: studio.example~X-Forwarded-Port: 443 | https://studio.example/ true 192.0.2.1",
                "127.0.0.9 | X-Forwarded-For: 192.0.2.1~X-Forwarded-Proto: https~X-Forwarded-Host: studio.example~X-Forwarded-Port: 8443 | https://studio.example:8443/ true 192.0.2.1",
            })
    void believesTrustedProxiesAndTakesTheNearestAddressThatIsNone(String from, String headers, String told)
            throws IOException {
        String answer = RawHttp.exchange(
                from,
                server.getPort(),
                "GET / HTTP/1.1\r\nHost: forged.example\r\n" + headers.replace("~", "\r\n")
                        + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).endsWith(told.replace("PORT", String.valueOf(server.getPort())));
    }

    @Test
    void takesSoManyConnectionsFromAnAddressAndAnyNumberFromAProxy() throws IOException {
        List<RawHttp> connections = new ArrayList<>();
        for (String from : List.of("127.0.3.1", "127.0.3.2", AtTheEdge.PROXY)) {
            for (int i = 0; i < CONNECTIONS + 2; i++) {
                RawHttp connection = RawHttp.connect(from, server.getPort());
                connections.add(connection);
                boolean taken = i < CONNECTIONS || from.equals(AtTheEdge.PROXY);
                assertThat(isAnswered(connection)).as(from + " " + i).isEqualTo(taken);
            }
        }
        for (RawHttp connection : connections) {
            connection.close();
        }
    }

    private static boolean isAnswered(RawHttp connection) {
        try {
            connection.send("GET / HTTP/1.1\r\nHost: studio.example\r\n\r\n");
            return connection.readHead().startsWith("HTTP/1.1 200");
        } catch (IOException hungUp) {
            return false;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "https://studio.example, https://studio.example",
        "https://Studio.Example/, https://studio.example",
        "HTTPS://Studio.Example:443/, https://studio.example",
        "http://127.0.0.1:8080, http://127.0.0.1:8080",
        "https://[2001:db8::1]:8443, https://[2001:db8::1]:8443"
    })
    void readsPublicAddresses(String typed, String read) {
        assertThat(new PublicUrl(typed).uri())
                .hasValueSatisfying(url -> assertThat(url).hasToString(read));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "studio.example",
                "ftp://studio.example",
                "https://studio.example/stancebook",
                "https://studio.example?x",
                "https://me@studio.example",
                "https://studio.example#a",
                "https://studio.example:70000",
                "https://st_udio",
                "//studio.example",
                "https://",
                "https://a b"
            })
    void refusesWhatIsNoPublicAddress(String typed) {
        assertThatThrownBy(() -> new PublicUrl(typed))
                .hasMessageContaining("STANCEBOOK_PUBLIC_URL")
                .hasMessageContaining(typed);
    }

    @Test
    void sharesPlacesOutByAddressAndInAll() {
        Places places = new Places(3, 2);

        assertThat(places.take("a")).isEqualTo(Places.Answer.TAKEN);
        assertThat(places.take("a")).isEqualTo(Places.Answer.TAKEN);
        assertThat(places.take("a")).isEqualTo(Places.Answer.ADDRESS_HAS_ITS_SHARE);
        assertThat(places.take("b")).isEqualTo(Places.Answer.TAKEN);
        assertThat(places.take("b")).isEqualTo(Places.Answer.FULL);
        places.give("a");
        assertThat(places.take("b")).isEqualTo(Places.Answer.TAKEN);
    }
}
