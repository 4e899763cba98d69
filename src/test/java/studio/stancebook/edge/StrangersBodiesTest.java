package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** What strangers send is refused before it is read, let alone kept on the disk. */
@StudioTest
class StrangersBodiesTest {

    private static final int LARGE = 32 * 1024 * 1024;
    private static final String BOUNDARY = "--limit";
    private static final String PART = "--" + BOUNDARY
            + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n\r\n" + "x".repeat(100_000);

    @LocalServerPort
    int port;

    @Autowired
    StudioClients studio;

    @Value("${stancebook.data}")
    String data;

    @ParameterizedTest
    @CsvSource({
        "POST /bring-in, 302",
        "POST /nowhere, 302",
        "GET /packages, 302",
        "POST /sign-in, 302",
        "GET /sign-in, 302",
        "POST /api/v1/packages/imports, 401",
        "POST /api/v1/tokens, 401",
        "POST /actuator/health, 302"
    })
    void areRefusedAfterTheHeadAndLeaveNoByteOnTheDisk(String begin, int status) throws IOException {
        try (RawHttp connection = RawHttp.connect("127.0.0.1", port)) {
            connection.send(head(begin, "") + PART);

            assertThat(connection.readHead()).startsWith("HTTP/1.1 " + status).contains("Connection: close");
            assertThat(spooled()).isEmpty();
        }
    }

    /** So that the test above would see it. */
    @Test
    void areOnTheDiskWhenSentBySomebodyWhoSignedIn() throws IOException {
        String session = studio.browser(Role.LEAD).cookie("session");
        try (RawHttp connection = RawHttp.connect("127.0.0.1", port)) {
            connection.send(head("POST /bring-in", "Cookie: session=" + session + "\r\n") + PART);

            assertThat(connection.isQuietFor(500)).isTrue();
            assertThat(spooled()).isNotEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"Content-Length: 16385, 413", "Transfer-Encoding: chunked, 413", "Content-Length: 9, 403"})
    void areShortFormsAtMost(String length, int status) throws IOException {
        try (RawHttp connection = RawHttp.connect("127.0.0.1", port)) {
            connection.send("POST /sign-in HTTP/1.1\r\nHost: localhost\r\n" + length
                    + "\r\nContent-Type: application/x-www-form-urlencoded\r\n\r\nemail=abc");

            assertThat(connection.readHead()).startsWith("HTTP/1.1 " + status);
        }
    }

    /** RFC 9110, section 10.1.1. */
    @Test
    void areNotAskedForWhenTheirSenderWaitsToBe() throws IOException {
        try (RawHttp connection = RawHttp.connect("127.0.0.1", port)) {
            connection.send(head("POST /api/v1/packages/imports", "Expect: 100-continue\r\n"));

            assertThat(connection.readHead()).startsWith("HTTP/1.1 401");
        }
    }

    private static String head(String begin, String more) {
        return begin + " HTTP/1.1\r\nHost: localhost\r\n" + more + "Content-Type: multipart/form-data; boundary="
                + BOUNDARY + "\r\nContent-Length: " + LARGE + "\r\n\r\n";
    }

    private List<Path> spooled() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(data, "uploads"))) {
            return files.filter(file -> file.getFileName().toString().startsWith("upload_"))
                    .toList();
        }
    }
}
