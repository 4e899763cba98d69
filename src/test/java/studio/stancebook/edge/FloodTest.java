package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;

/** An address that sends requests faster than it may is refused, and nobody else waits for it. */
@AtTheEdge
class FloodTest {

    private static final String REQUEST = "GET /sign-in HTTP/1.1\r\nHost: studio.example\r\n";
    private static final int CONNECTIONS = 60;
    private static final int REQUESTS = 100;

    /** Our choice: what somebody waits for without wondering. */
    private static final Duration SOON = Duration.ofSeconds(2);

    @LocalServerPort
    int port;

    @Test
    void isRefusedWhileOthersAreAnswered() throws Exception {
        ExecutorService clients = Executors.newFixedThreadPool(CONNECTIONS);
        try {
            List<Future<String>> answers = new ArrayList<>();
            for (int i = 0; i < CONNECTIONS; i++) {
                answers.add(clients.submit(() -> {
                    try (RawHttp connection = RawHttp.connect("127.0.3.1", port)) {
                        return connection
                                .send((REQUEST + "\r\n").repeat(REQUESTS))
                                .readToTheEnd();
                    } catch (IOException hungUp) {
                        return "";
                    }
                }));
            }
            for (int i = 0; i < 10; i++) {
                long start = System.nanoTime();
                assertThat(RawHttp.exchange("127.0.3.2", port, REQUEST + "Connection: close\r\n\r\n"))
                        .startsWith("HTTP/1.1 200");
                assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(SOON);
            }

            StringBuilder all = new StringBuilder();
            for (Future<String> answer : answers) {
                all.append(answer.get());
            }
            assertThat(count(all, "HTTP/1\\.1 200")).isBetween(1, CONNECTIONS * REQUESTS / 2);
            assertThat(count(all, "HTTP/1\\.1 429")).isPositive();
            assertThat(all).contains("Retry-After: 1");
        } finally {
            clients.shutdownNow();
        }
    }

    private static int count(CharSequence text, String pattern) {
        return (int) Pattern.compile(pattern).matcher(text).results().count();
    }
}
