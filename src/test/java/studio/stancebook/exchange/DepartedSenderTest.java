package studio.stancebook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.data.domain.Pageable;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.edge.RawHttp;

/** An import ends when whoever sent it has left, and nothing of it stays. */
@StudioTest
class DepartedSenderTest {

    private static final String HEADING = "name,segment,wheelbase [mm],overallLength [mm],overallHeight [mm]\n";
    private static final String BOUNDARY = "part";

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @LocalServerPort
    int port;

    private final String segment = "s" + UUID.randomUUID().toString().substring(0, 8);

    @BeforeEach
    void makeSegment() {
        segments.create(segment, segment, "");
    }

    @Test
    void leavesNothingBehind() throws IOException {
        try (RawHttp leaving = RawHttp.connect("127.0.0.1", port)) {
            leaving.send(request(rows(30_000)));
            assertThat(leaving.isQuietFor(500)).as("is still at work").isTrue();
        }

        // One import runs at a time: this one waits until the other has ended.
        Sent.by(studio.api(Role.LEAD), HEADING + row("after")).expect(200);
        assertThat(packages()).isEqualTo(1);
    }

    @Test
    void isNotTakenForSomebodyWhoSendsTheNextRequestEarly() throws IOException {
        try (RawHttp hurrying = RawHttp.connect("127.0.0.1", port)) {
            hurrying.send(
                    request(rows(3_000)) + "GET /actuator/health HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");

            assertThat(hurrying.readToTheEnd()).contains("\"accepted\":3000").contains("\"UP\"");
        }
        assertThat(packages()).isEqualTo(3_000);
    }

    private long packages() {
        return catalogue
                .search(CatalogueFilter.ofSegment(segment), Pageable.ofSize(1))
                .getTotalElements();
    }

    private String rows(int count) {
        StringBuilder rows = new StringBuilder(HEADING);
        for (int i = 0; i < count; i++) {
            rows.append(row("Invented " + i));
        }
        return rows.toString();
    }

    private String row(String name) {
        return name + "," + segment + ",2800,4700,1500\n";
    }

    private String request(String table) {
        String body =
                "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"invented.csv\"\r\n"
                        + "Content-Type: text/csv\r\n\r\n" + table + "\r\n--" + BOUNDARY + "--\r\n";
        return "POST /api/v1/packages/imports HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer " + studio.token(Role.LEAD)
                + "\r\nContent-Type: multipart/form-data; boundary=" + BOUNDARY + "\r\nContent-Length: " + body.length()
                + "\r\n\r\n" + body;
    }
}
