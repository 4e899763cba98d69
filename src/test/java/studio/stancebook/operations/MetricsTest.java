package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.http.MediaType;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.client.RestTestClient;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** What whoever watches the server is told, and who is told it. The format is Prometheus' text format. */
@StudioTest
@TestPropertySource(
        properties = {
            "stancebook.metrics.token=" + MetricsTest.TOKEN,
            "management.defaults.metrics.export.enabled=true",
            "management.prometheus.metrics.export.enabled=true"
        })
class MetricsTest {

    static final String TOKEN = "a-token-for-metrics-only";

    private static final String METRICS = "/actuator/prometheus";

    @Autowired
    StudioClients studio;

    @Test
    void countsRequestsAndTellsOfTheDatabase() {
        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/segments")
                .exchange()
                .expectStatus()
                .isOk();

        assertThat(value("http_server_requests_seconds_count", "uri=\"/api/v1/segments\"", "method=\"GET\""))
                .isPositive();
        assertThat(value("http_server_requests_seconds_bucket", "uri=\"/api/v1/segments\"", "le=\"0.1\""))
                .isNotNegative();
        assertThat(value("hikaricp_connections_max")).isPositive();
        assertThat(value("hikaricp_connections_acquire_seconds_count")).isPositive();
        assertThat(value("hikaricp_connections_usage_seconds_count")).isPositive();
    }

    @Test
    void countsVerdictsByKind() {
        addSegment("metrics-verdicts");
        double before = value("stancebook_verdicts_total", "kind=\"not-measurable\"");

        post(
                        "/api/v1/proposals",
                        Map.of(
                                "name",
                                "Watched",
                                "segment",
                                "metrics-verdicts",
                                "dimensions",
                                Map.of("wheelbase", 2900)))
                .expectStatus()
                .isCreated();

        assertThat(value("stancebook_verdicts_total", "kind=\"not-measurable\""))
                .isGreaterThan(before);
    }

    @Test
    void countsImportsAndTheirRows() {
        addSegment("metrics-imports");
        double writtenBefore = value("stancebook_import_rows_total", "outcome=\"written\"");
        double refusedBefore = value("stancebook_import_rows_total", "outcome=\"refused\"");
        double refusals = value("stancebook_imports_seconds_count", "outcome=\"refused\"");

        bringIn("name,segment,wheelbase\nOne,metrics-imports,2900\nTwo,metrics-imports,2800\n");
        bringIn("name,segment,wheelbase\nThree,metrics-imports,long\n");

        assertThat(value("stancebook_import_rows_total", "outcome=\"written\"")).isEqualTo(writtenBefore + 2);
        assertThat(value("stancebook_import_rows_total", "outcome=\"refused\"")).isEqualTo(refusedBefore + 1);
        assertThat(value("stancebook_imports_seconds_count", "outcome=\"refused\""))
                .isEqualTo(refusals + 1);
    }

    @Test
    void tellsHowManyClassesAreKept() {
        addSegment("metrics-kept");
        post(
                        "/api/v1/packages",
                        Map.of("name", "P", "segment", "metrics-kept", "dimensions", Map.of("wheelbase", 2900)))
                .expectStatus()
                .isCreated();
        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/segments/metrics-kept/statistics")
                .exchange()
                .expectStatus()
                .isOk();

        assertThat(value("stancebook_classes_kept")).isPositive();
        assertThat(value("stancebook_classes_kept_packages")).isPositive();
    }

    @Test
    void areForTheirOwnToken() {
        assertThat(studio.withToken(TOKEN)
                        .get()
                        .uri(METRICS)
                        .exchange()
                        .returnResult(String.class)
                        .getResponseBody())
                .contains("jvm_memory_used_bytes");
        studio.withToken(TOKEN)
                .get()
                .uri("/api/v1/segments")
                .exchange()
                .expectStatus()
                .isUnauthorized();
        studio.withToken("another-token-for-metrics")
                .get()
                .uri(METRICS)
                .exchange()
                .expectStatus()
                .isUnauthorized()
                .expectHeader()
                .contentType(MediaType.APPLICATION_PROBLEM_JSON);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void areForLeadsAmongPeople(Role role) {
        int status = role == Role.LEAD ? 200 : 403;

        studio.api(role).get().uri(METRICS).exchange().expectStatus().isEqualTo(status);
        assertThat(studio.browser(role).get(METRICS).statusCode()).isEqualTo(status);
    }

    @Test
    void sendsWhoeverHasNoTokenToSignIn() {
        assertThat(studio.browser().get(METRICS).statusCode()).isEqualTo(302);
    }

    /** The value of the first sample of a name with all these labels. */
    private double value(String name, String... labels) {
        String all = studio.withToken(TOKEN)
                .get()
                .uri(METRICS)
                .exchange()
                .expectStatus()
                .isOk()
                .returnResult(String.class)
                .getResponseBody();
        return all.lines()
                .filter(line -> line.matches(name + "[ {].*"))
                .filter(line -> Arrays.stream(labels).allMatch(line::contains))
                .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
                .findFirst()
                .orElseThrow(
                        () -> new AssertionError("No " + name + " with " + Arrays.toString(labels) + " in\n" + all));
    }

    private void addSegment(String key) {
        post("/api/v1/segments", Map.of("key", key, "name", key, "description", ""))
                .expectStatus()
                .isCreated();
    }

    private RestTestClient.ResponseSpec post(String path, Map<String, ?> body) {
        return studio.api(Role.LEAD)
                .post()
                .uri(path)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange();
    }

    private void bringIn(String csv) {
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(csv.getBytes(StandardCharsets.UTF_8)) {
            @Override
            public String getFilename() {
                return "watched.csv";
            }
        });
        studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/packages/imports")
                .contentType(MediaType.MULTIPART_FORM_DATA)
                .body(parts)
                .exchange()
                .returnResult(String.class);
    }
}
