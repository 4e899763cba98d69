package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Whoever spreads requests over servers is told when one has no memory left. */
@AtTheEdge
class MemoryGoneTest {

    @LocalServerPort
    int port;

    @Autowired
    FilledHeap heap;

    @AfterEach
    void empty() {
        heap.fill(0);
    }

    @Test
    void makesTheServerNotReadyButLetsItLive() throws IOException {
        assertThat(status("readiness")).isEqualTo("200");

        heap.fill(0.96);

        assertThat(status("readiness")).isEqualTo("503");
        assertThat(status("liveness")).isEqualTo("200");
    }

    private String status(String what) throws IOException {
        return RawHttp.exchange(
                        "127.0.0.1",
                        port,
                        "GET /actuator/health/" + what
                                + " HTTP/1.1\r\nHost: studio.example\r\nConnection: close\r\n\r\n")
                .substring(9, 12);
    }
}
