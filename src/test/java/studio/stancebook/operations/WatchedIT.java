package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What whoever runs the packaged server sees of it, and how it stops. */
class WatchedIT {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String METRICS_TOKEN = "a-token-for-metrics-only";
    private static final Duration LONGEST = Duration.ofMinutes(1);
    private static final Pattern A_POST_UNDER_WAY =
            Pattern.compile("(?m)^http_server_requests_active_seconds_gcount\\{[^}]*method=\"POST\"[^}]*} [1-9]");

    /** What a process that ended by SIGTERM returns: 128 and the number of the signal. */
    private static final int BY_SIGTERM = 128 + 15;

    @TempDir
    Path folder;

    @Test
    void logsObjectsWithTheIdOfTheRequestThatItsAnswerHas() throws IOException {
        try (PackagedStudio studio =
                PackagedStudio.in(folder).with("STANCEBOOK_LOG_FORMAT", "ecs").andWait()) {
            HttpResponse<byte[]> answer = StudioApi.asLead(studio).postForBytes("/api/v1/backups");
            String id = answer.headers().firstValue("X-Request-Id").orElseThrow();
            studio.process()
                    .waitUntil(
                            "the backup is logged",
                            LONGEST,
                            () -> studio.console().contains(id));
            studio.stop();

            List<JsonNode> events = studio.console()
                    .lines()
                    .filter(line -> line.startsWith("{"))
                    .map(JSON::readTree)
                    .toList();
            assertThat(events)
                    .hasSizeGreaterThan(10)
                    .allSatisfy(event -> assertThat(event.has("@timestamp")).isTrue());
            assertThat(events)
                    .filteredOn(event -> id.equals(event.path("requestId").asString("")))
                    .extracting(event -> event.get("message").asString())
                    .anyMatch(message -> message.contains("A backup of"));
        }
    }

    @Test
    void tellsItsMetricsToWhoeverHasTheirToken() throws IOException {
        try (PackagedStudio studio = PackagedStudio.in(folder)
                .with("STANCEBOOK_METRICS_TOKEN", METRICS_TOKEN)
                .andWait()) {
            HttpResponse<String> answer =
                    StudioApi.withToken(studio, METRICS_TOKEN).get("/actuator/prometheus");

            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.body())
                    .contains("stancebook_verdicts_total{kind=\"inside\"} 0")
                    .contains("stancebook_import_rows_total{outcome=\"refused\"} 0")
                    .contains("hikaricp_connections_active{");
            assertThat(StudioApi.asNobody(studio).get("/actuator/prometheus").statusCode())
                    .isEqualTo(401);
            studio.stop();
            assertThat(studio.console()).doesNotContain(METRICS_TOKEN);
        }
    }

    @Test
    void answersTheRequestThatIsUnderWayBeforeItStops() throws IOException {
        PackagedStudio studio = PackagedStudio.in(folder).andWait();
        StudioApi api = StudioApi.asLead(studio);
        api.addSegment("last");
        String body = StudioApi.packageJson("last", "under way");

        try (Socket connection =
                new Socket(studio.address().getHost(), studio.address().getPort())) {
            OutputStream out = connection.getOutputStream();
            out.write(head(api, body).getBytes(StandardCharsets.UTF_8));
            out.write(body.substring(0, 20).getBytes(StandardCharsets.UTF_8));
            out.flush();
            studio.process()
                    .waitUntil(
                            "the request is under way",
                            LONGEST,
                            () -> A_POST_UNDER_WAY.matcher(metrics(api)).find());

            studio.process().askToEnd();
            studio.process()
                    .waitUntil(
                            "the server stops",
                            LONGEST,
                            () -> studio.console().contains("Commencing graceful shutdown"));
            out.write(body.substring(20).getBytes(StandardCharsets.UTF_8));
            out.flush();

            assertThat(new String(connection.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                    .startsWith("HTTP/1.1 201");
        }
        Ended ended = studio.process().waitForEnd(LONGEST);
        assertThat(ended.exitCode()).isEqualTo(BY_SIGTERM);
        assertThat(ended.console()).contains("Graceful shutdown complete");

        try (PackagedStudio again = PackagedStudio.in(folder).andWait()) {
            assertThat(api.at(again).packageNames()).containsExactly("under way");
        }
    }

    @Test
    void doesNotStartWithASettingThatThereIsNot() {
        Ended ended = PackagedStudio.in(folder).with("STANCEBOOK_PROT", "8080").toTheEnd();

        assertThat(ended.console())
                .contains("There is no setting STANCEBOOK_PROT.")
                .contains("STANCEBOOK_PORT")
                .doesNotContain("\tat ");
        assertThat(ended.exitCode()).isNotZero();
    }

    private static String head(StudioApi api, String body) {
        return String.join(
                "\r\n",
                "POST /api/v1/packages HTTP/1.1",
                "Host: localhost",
                "Authorization: " + api.authorization(),
                "Content-Type: application/json",
                "Content-Length: " + body.getBytes(StandardCharsets.UTF_8).length,
                "Connection: close",
                "",
                "");
    }

    private static String metrics(StudioApi api) {
        try {
            return api.get("/actuator/prometheus").body();
        } catch (IOException e) {
            throw new AssertionError("The metrics were not answered", e);
        }
    }
}
