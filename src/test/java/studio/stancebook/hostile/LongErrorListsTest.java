package studio.stancebook.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient.ResponseSpec;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Segments;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** However much is wrong with a request, the answer lists 20 errors and says how many there are. */
@StudioTest
class LongErrorListsTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final int MOST_BYTES = 20_000;

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    private final String segment = "e" + UUID.randomUUID().toString().substring(0, 8);

    private static String unknownKeys(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "\"" + Integer.toString(i, 36) + "x\":0")
                .collect(Collectors.joining(","));
    }

    private ResponseSpec post(String uri, String json) {
        return studio.api(Role.LEAD)
                .post()
                .uri(uri)
                .contentType(MediaType.APPLICATION_JSON)
                .body(json)
                .exchange();
    }

    private static JsonNode answer(ResponseSpec response, int status) {
        byte[] bytes = response.expectStatus()
                .isEqualTo(status)
                .expectBody(byte[].class)
                .returnResult()
                .getResponseBody();
        assertThat(bytes).isNotNull().hasSizeLessThan(MOST_BYTES);
        return JSON.readTree(bytes);
    }

    private static void listsTwentyOf(int count, JsonNode problem) {
        assertThat(problem.get("errors").size()).isEqualTo(20);
        assertThat(problem.get("errorCount").asInt()).isEqualTo(count);
    }

    @ParameterizedTest
    @CsvSource({
        "/api/v1/packages, '{\"name\":\"A\",\"segment\":\"none\",\"dimensions\":{\"wheelbase\":2500,$}}'",
        "/api/v1/packages, '{\"name\":\"A\",\"segment\":\"none\",\"dimensions\":{\"wheelbase\":2500,\"origins\":{$}}}'",
        "/api/v1/packages, '{\"name\":\"A\",\"segment\":\"none\",\"dimensions\":{\"wheelbase\":2500,\"uncertainties\":{$}}}'"
    })
    void areShortForUnknownNames(String uri, String body) {
        listsTwentyOf(40_000, answer(post(uri, body.replace("$", unknownKeys(40_000))), 422));
    }

    @Test
    void areShortForPointsOutOfRange() {
        String points = IntStream.range(0, 2000).mapToObj(i -> "[99999,99999]").collect(Collectors.joining(","));
        segments.create(segment, segment, "");

        JsonNode problem = answer(
                post(
                        "/api/v1/packages",
                        "{\"name\":\"A\",\"segment\":\"" + segment
                                + "\",\"dimensions\":{\"wheelbase\":2500,\"outline\":[" + points + "]}}"),
                422);

        listsTwentyOf(4000, problem);
    }

    @Test
    void areShortForNamesWithoutEnd() {
        JsonNode problem = answer(
                post(
                        "/api/v1/packages",
                        "{\"name\":\"A\",\"segment\":\"none\",\"dimensions\":{\"wheelbase\":2500,\""
                                + "x".repeat(40_000) + "\":1}}"),
                422);

        assertThat(problem.get("errorCount").asInt()).isEqualTo(1);
    }

    @Test
    void refusesABodyOfMoreValuesThanAnyPackageHas() {
        JsonNode problem = answer(
                post(
                        "/api/v1/packages",
                        "{\"name\":\"A\",\"segment\":\"none\",\"dimensions\":{" + unknownKeys(400_000) + "}}"),
                400);

        assertThat(problem.get("detail").asString()).contains("too many values");
    }

    @Test
    void areShortForTheTermsOfARatio() {
        String terms =
                IntStream.range(0, 40_000).mapToObj(i -> "\"no" + i + "\"").collect(Collectors.joining(","));

        listsTwentyOf(
                40_001,
                answer(
                        post(
                                "/api/v1/measures",
                                "{\"key\":\"many\",\"name\":\"Many\",\"numerator\":[" + terms
                                        + "],\"denominator\":[]}"),
                        422));
    }

    private ResponseSpec bringIn(String file, Map<String, String> parameters) {
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(file.getBytes(StandardCharsets.UTF_8)) {
            @Override
            public String getFilename() {
                return "cars";
            }
        });
        parameters.forEach(parts::add);
        return studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/packages/imports")
                .contentType(MediaType.MULTIPART_FORM_DATA)
                .body(parts)
                .exchange();
    }

    @Test
    void areShortForAMappingOfColumnsThatAreNotThere() {
        String mapping = IntStream.range(0, 10_000)
                .mapToObj(i -> "\"c" + i + "\":{\"field\":\"name\"}")
                .collect(Collectors.joining(",", "{", "}"));

        listsTwentyOf(10_000, answer(bringIn("name\nA\n", Map.of("mapping", mapping)), 422));
    }

    @ParameterizedTest
    @CsvSource({"false, 422", "true, 200"})
    void countAllThatIsWrongWithAPackageOfAFile(boolean partial, int status) {
        segments.create(segment, segment, "");
        String file = "[{\"name\":\"A\",\"segment\":\"" + segment + "\",\"dimensions\":{\"wheelbase\":2500,"
                + "\"uncertainties\":{" + unknownKeys(25_000) + "}," + unknownKeys(25_000) + "}}]";

        byte[] bytes = bringIn(file, Map.of("partial", String.valueOf(partial)))
                .expectStatus()
                .isEqualTo(status)
                .expectBody(byte[].class)
                .returnResult()
                .getResponseBody();

        assertThat(bytes).isNotNull().hasSizeLessThan(5 * MOST_BYTES);
        JsonNode report = JSON.readTree(bytes);
        assertThat(report.get("problems").size()
                        + report.get("problemsNotListed").asInt())
                .isEqualTo(50_000);
        assertThat(report.get("imported").asInt()).isEqualTo(partial ? 1 : 0);
        if (!partial) {
            listsTwentyOf(50_000, report);
        }
    }

    @Test
    void areShortOnAPage() {
        segments.create(segment, segment, "");
        StudioBrowser browser = studio.browser(Role.LEAD);
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("name", "A");
        fields.put("segment", segment);
        fields.put("origin", "measured");
        fields.put("dimensions.wheelbase", "2500");
        fields.put("dimensions.outline", "no point\n".repeat(30_000));

        HttpResponse<String> page = browser.submit("/packages/new?segment=" + segment, "/packages", fields);

        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("30,001 entries are not accepted").contains("29,981 more are not listed");
        assertThat(page.body().split("is not a point", -1)).hasSizeLessThan(25);
    }
}
