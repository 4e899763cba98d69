package studio.stancebook.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.core.env.Environment;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.rights.AnswerChecks;

/** Bytes that are no request, or one that nothing behind the container ever sees. */
@StudioTest
@ExtendWith(OutputCaptureExtension.class)
class UnparsableRequestsTest {

    private static final String REST = " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";

    @Autowired
    Environment environment;

    @Autowired
    StudioClients studio;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /api/v1/pack{ages" + REST,
                "GET /proposals|x" + REST,
                "GET /api/v1/packages HTTP/9.9\r\nHost: localhost\r\n\r\n",
                "GET /api/v1/packages HTTP/1.1\r\nHost: a b\r\n\r\n",
                "GET /api/v1/packages HTTP/1.1\r\n\r\n",
                "G\u0001T /" + REST,
                "POST /api/v1/packages HTTP/1.1\r\nHost: localhost\r\nContent-Length: x\r\n\r\n",
                "POST /api/v1/packages HTTP/1.1\r\nHost: localhost\r\nContent-Length: 2\r\nContent-Length: 3\r\n\r\n{}",
                "POST /api/v1/packages HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: xchunked\r\n\r\n0\r\n\r\n",
                "GET /api/v1/packages%2F1" + REST,
                "GET /api/v1/packages%00" + REST,
                "GET /api/v1/packages;a=b" + REST,
                "GET /api/v1//packages" + REST,
                "GET /packages%2e%2e%2f" + REST,
                "GET /packages;a=b" + REST,
                "TRACE /packages" + REST,
                "garbage\r\n\r\n"
            })
    void areRefusedInWordsOfOurs(String bytes) throws IOException {
        String answer = exchange(bytes);

        assertThat(answer).startsWith("HTTP/1.1 ");
        assertThat(Integer.parseInt(answer.substring(9, 12)))
                .isBetween(400, 505)
                .isNotEqualTo(500);
        assertThat(AnswerChecks.inside(answer)).isEmpty();
        assertThat(answer)
                .doesNotContainIgnoringCase("tomcat")
                .doesNotContain("Tahoma")
                .contains("X-Content-Type-Options: nosniff")
                .contains("Content-Security-Policy: default-src 'none'")
                .contains(bytes.contains(" /packages") ? "text/html" : "application/problem+json");
    }

    /** RFC 9112, section 6.3: Transfer-Encoding overrides Content-Length, and the connection is closed after it. */
    @Test
    void hideNoSecondRequestBehindTwoLengths() throws IOException {
        String hidden = "GET /actuator/health HTTP/1.1\r\nHost: localhost\r\n\r\n";
        String answer =
                exchange("POST /sign-in HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\nContent-Length: "
                        + (5 + hidden.length()) + "\r\n\r\n0\r\n\r\n" + hidden);

        assertThat(answer.split("HTTP/1\\.1 [0-9]{3}", -1)).as(answer).hasSize(2);
    }

    /** Each left a stack trace in the log when it was answered with 500. */
    @ParameterizedTest
    @FieldSource("UNREADABLE_PARAMETERS")
    void areRefusedWithoutAStackTraceInTheLog(String bytes, CapturedOutput log) throws IOException {
        assertThat(exchange(bytes)).startsWith("HTTP/1.1 400 ");
        assertThat(log.getAll()).doesNotContain("\tat ").doesNotContain(" ERROR ");
    }

    static final List<String> UNREADABLE_PARAMETERS = List.of(
            "GET /sign-in?x=%FF" + REST,
            "GET /sign-in?q=%zz" + REST,
            "GET /packages?q=%zz" + REST,
            "GET /api/v1/packages?q=%zz" + REST,
            "GET /sign-in?" + "a=1&".repeat(1_100) + "a=1" + REST,
            form("a=%FF"),
            form("a=%zz"),
            form("a=1&".repeat(1_100) + "a=1"));

    private static String form(String fields) {
        return "POST /sign-in HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: " + fields.length() + "\r\n\r\n"
                + fields;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "session=!",
                "session=????",
                "REDIRECT_URI=!",
                "REDIRECT_URI=%FF",
                "REDIRECT_URI=Lw",
                "form-token=%"
            })
    void takeACookieThatCannotBeReadForNone(String cookie, CapturedOutput log) throws IOException {
        String asked =
                "GET /sign-in HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nCookie: " + cookie + "\r\n\r\n";

        assertThat(exchange(asked)).startsWith("HTTP/1.1 200 ");
        assertThat(exchange(asked.replace("/sign-in", "/packages"))).startsWith("HTTP/1.1 401 ");
        assertThat(log.getAll()).doesNotContain("\tat ").doesNotContain(" ERROR ");
    }

    /** The one that says which page was wanted is read once somebody has signed in. */
    @ParameterizedTest
    @ValueSource(strings = {"!", "????", "L3BhY2thZ2VzIHg=", "aHR0cDovL2Vsc2V3aGVyZS5leGFtcGxl"})
    void leadToTheFirstPageAfterSigningInWithSuchACookie(String wanted, CapturedOutput log) {
        StudioBrowser browser = studio.browser();
        browser.keep("REDIRECT_URI", wanted);

        HttpResponse<String> answer =
                browser.trySigningIn(studio.person(Role.VIEWER).email(), StudioClients.PASSWORD);

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Location")).hasValue("/");
        assertThat(log.getAll()).doesNotContain("\tat ").doesNotContain(" ERROR ");
    }

    private String exchange(String bytes) throws IOException {
        int port = environment.getRequiredProperty("local.server.port", Integer.class);
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(bytes.getBytes(StandardCharsets.ISO_8859_1));
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
