package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** Many who send hardly anything stop nobody else, and are not waited for without end. */
@AtTheEdge
class SlowClientsTest {

    private static final String HOST = " HTTP/1.1\r\nHost: studio.example\r\n";
    private static final String FORM =
            "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 10000\r\n\r\nemail=";

    /** Our choice: what somebody waits for without wondering. */
    private static final Duration SOON = Duration.ofSeconds(2);

    /** Some times the second after which this server stops waiting. */
    private static final Duration LONGEST = Duration.ofSeconds(8);

    /** Shorter than that second, so that no connection is ever silent for long. */
    private static final int BETWEEN_BYTES_MILLIS = 300;

    @LocalServerPort
    int port;

    @Autowired
    StudioClients studio;

    @ParameterizedTest(name = "{1} connections from {2} addresses that begin with {0}")
    @CsvSource({
        "GET /sign-in, 220, 1",
        "GET /sign-in, 600, 4",
        "POST /sign-in, 220, 1",
        "POST /sign-in, 600, 1",
        "POST /sign-in, 600, 4",
        "POST /packages, 600, 4",
        "POST /api/v1/packages, 600, 4"
    })
    void stopNobodyElseAndAreHungUpOn(String begin, int connections, int addresses) throws IOException {
        String bytes = begin + HOST + (begin.startsWith("GET") ? "X-Slow: " : FORM);
        try (SlowClients slow = new SlowClients(port, bytes, connections, addresses)) {
            long end = System.nanoTime() + LONGEST.toNanos();
            do {
                assertAnsweredSoon("/actuator/health/liveness");
                assertAnsweredSoon("/sign-in");
                slow.dribble(BETWEEN_BYTES_MILLIS);
            } while (slow.stillOpen() > 0 && System.nanoTime() < end);

            assertThat(slow.stillOpen()).isZero();
        }
    }

    /** More than there are places for forms of strangers: 16 for an address, 120 for all (decision 0075). */
    @Test
    void keepNobodyFromSigningInWhoSendsAFormAtOnce() throws IOException {
        try (SlowClients slow = new SlowClients(port, "POST /sign-in" + HOST + FORM, 200, 10)) {
            slow.dribble(BETWEEN_BYTES_MILLIS);
            String answer = RawHttp.exchange(
                    "127.0.0.1",
                    port,
                    "POST /sign-in" + HOST + "Connection: close\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                            + "Content-Length: 6\r\n\r\nemail=");

            assertThat(slow.stillOpen()).isPositive();
            // It lacks the token of the form.
            assertThat(answer).startsWith("HTTP/1.1 403");
        }
    }

    @Test
    void keepNobodyFromSigningInWhoSendsAFormInTwoPackets() throws Exception {
        String head =
                "POST /sign-in" + HOST + "Connection: close\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                        + "Content-Length: 6\r\n\r\n";
        try (SlowClients slow = new SlowClients(port, "POST /sign-in" + HOST + FORM, 200, 10)) {
            slow.dribble(BETWEEN_BYTES_MILLIS);
            for (int i = 0; i < 5; i++) {
                try (RawHttp form = RawHttp.connect("127.0.0.1", port)) {
                    form.send(head);
                    assertThat(form.isQuietFor(50)).isTrue();
                    // It lacks the token of the form.
                    assertThat(form.send("email=").readHead()).startsWith("HTTP/1.1 403");
                }
            }
            assertThat(slow.stillOpen()).isPositive();
        }
    }

    @Test
    void areHungUpOnWhenSignedInToo() throws IOException {
        try (RawHttp upload = RawHttp.connect("127.0.0.1", port)) {
            upload.send(head(1_000_000) + "{\"key\": \"");
            int quiet = 0;
            while (upload.isQuietFor(BETWEEN_BYTES_MILLIS) && quiet++ < 20) {
                upload.send("x");
            }

            // The first byte of the answer was read while waiting for it.
            assertThat(upload.readHead()).startsWith("TTP/1.1 408").contains("Connection: close");
        }
    }

    /** 40 KB in a second are more than the 16 that are asked for, and 2.5 seconds longer than the one that is for free. */
    @Test
    void areHeardToTheEndIfTheyAreFastEnough() throws IOException {
        try (RawHttp upload = RawHttp.connect("127.0.0.1", port)) {
            String part = "x".repeat(4_000);
            String begin = "{\"key\": \"";
            upload.send(head(begin.length() + 25 * part.length()) + begin);
            for (int i = 0; i < 25; i++) {
                assertThat(upload.isQuietFor(100)).isTrue();
                upload.send(part);
            }

            assertThat(upload.readHead()).startsWith("HTTP/1.1 4").doesNotStartWith("HTTP/1.1 408");
        }
    }

    private String head(int length) {
        return "POST /api/v1/segments" + HOST + "Authorization: Bearer " + studio.token(Role.LEAD)
                + "\r\nContent-Type: application/json\r\nContent-Length: " + length + "\r\n\r\n";
    }

    private void assertAnsweredSoon(String path) throws IOException {
        long start = System.nanoTime();
        String answer = RawHttp.exchange("127.0.0.1", port, "GET " + path + HOST + "Connection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 200");
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(SOON);
    }
}
