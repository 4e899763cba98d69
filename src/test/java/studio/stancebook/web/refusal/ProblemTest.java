package studio.stancebook.web.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import org.springframework.test.web.servlet.client.RestTestClient;
import org.springframework.test.web.servlet.client.RestTestClient.BodyContentSpec;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** What is told of everything that can be wrong with a request, or with us. */
@StudioTest
@Import(Faults.class)
class ProblemTest {

    @Autowired
    StudioClients studio;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {"name":"A","front":{"rim":17.5}}        | front.rim    | takes a whole number
                    {"name":"A","front":{"rim":"x"}}         | front.rim    | a whole number
                    {"name":"A","front":{"rim":"17"}}        | front.rim    | a whole number
                    {"name":"A","front":{"rim":null}}        | front.rim    | a whole number
                    {"name":"A","front":{"width":[]}}        | front.width  | a number
                    {"name":"A","front":7}                   | front        | an object in { }
                    {"name":"A","underbody":[1,2,"x"]}       | underbody[2] | a number
                    {"name":"A","underbody":{}}              | underbody    | a list in [ ]
                    {"name":"A","colour":"GREEN"}            | colour       | one of RED, BLUE
                    {"name":"A","driven":"yes"}              | driven       | true or false
                    {"name":"A","shown":"yesterday"}         | shown        | ISO 8601
                    {"name":{}}                              | name         | text in quotes
                    {"name":"A","wheelbse":1}                | wheelbse     | known are colour, driven, front, name, shown, underbody
                    {"name":"A","front":{"rim":1,"width":1,"rimm":1}} | front.rimm | There is no field "rimm"
                    """)
    void namesTheFieldOfAJsonBodyAndWhatItTakes(String json, String field, String words) {
        String detail = problem(post(json), 400, "malformed")
                                .jsonPath("$.errors[0].field")
                                .isEqualTo(field)
                                .jsonPath("$.errors.length()")
                                .isEqualTo(1)
                                .returnResult()
                                .getResponseBodyContent()
                        == null
                ? ""
                : detail(json);

        assertThat(detail)
                .contains(words)
                .doesNotContain("java")
                .doesNotContain("studio.stancebook")
                .doesNotContain("Vehicle");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "{\"name\":}",
                "[",
                "\"",
                "{\"name\":NaN}",
                "{\"name\":\"A\",\"name\":\"B\"}",
                "{} {}",
                "nul",
                "\u0000",
                "{\"name\":\"\t\"}"
            })
    void saysWhereJsonIsBroken(String json) {
        problem(post(json), 400, "malformed")
                .jsonPath("$.detail")
                .value(
                        String.class,
                        detail -> assertThat(detail)
                                .containsPattern("line \\d+, column \\d+")
                                .doesNotContain("jackson"));
    }

    @Test
    void takesNoJsonWithoutEnd() {
        problem(post("[".repeat(100_000)), 400, "malformed");
        problem(post("{\"name\":" + "9".repeat(100_000) + "}"), 400, "malformed");
        problem(post(""), 400, "malformed")
                .jsonPath("$.detail")
                .isEqualTo("The body is missing or cannot be read; this call takes a JSON body.");
    }

    @Test
    void takesNoBodyBeyondItsLimit() {
        problem(post("{\"name\":\"" + "x".repeat(5 * 1024 * 1024) + "\"}"), 413, "too-large")
                .jsonPath("$.detail")
                .isEqualTo("The body is too large: at most 4 MB are accepted.");
    }

    @Test
    void letsAValueRefuseInItsOwnWords() {
        problem(post("share", "{\"value\":1.5}"), 422, "impossible")
                .jsonPath("$.errors[0].message")
                .isEqualTo("1.5 is not a share: it is from 0 to 1.");
        problem(post("hidden", "{\"value\":1}"), 400, "malformed")
                .jsonPath("$.detail")
                .value(String.class, detail -> assertThat(detail).doesNotContain("secret"));
    }

    @Test
    void namesFieldsThatBreakADeclaredRule() {
        problem(post("{\"name\":\" \"}"), 422, "impossible")
                .jsonPath("$.errors[0].field")
                .isEqualTo("name");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    number                   | 400 | malformed | diameterMm
                    number?diameterMm=wide   | 400 | malformed | diameterMm
                    number?diameterMm=       | 400 | malformed | diameterMm
                    number?diameterMm=2001   | 400 | malformed | diameterMm
                    header                   | 400 | malformed | X-Needed
                    id/abc                   | 400 | malformed | id
                    id/99999999999999999999  | 400 | malformed | id
                    """)
    void namesTheParameterAtFault(String path, int status, String slug, String field) {
        problem(get(path), status, slug).jsonPath("$.errors[0].field").isEqualTo(field);
    }

    @ParameterizedTest
    @CsvSource({
        "fail/conflict, 409, conflict",
        "fail/impossible, 422, impossible",
        "fail/locking, 412, stale",
        "fail/integrity, 409, conflict",
        "fail/otherwise, 404, not-found",
        "fail/teapot, 418, malformed",
        "fail/gone, 410, malformed",
        "nowhere, 404, not-found",
        "lead, 403, forbidden"
    })
    void tellsEveryKindOfProblemInOneShape(String path, int status, String slug) {
        problem(get(path), status, slug)
                .jsonPath("$.detail")
                .value(String.class, d -> assertThat(d).isNotBlank().doesNotContain("secret"))
                .jsonPath("$.title")
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"fail/conflict", "nowhere", "lead", "fail/internal"})
    void tellsTheIdOfTheRequestThatTheAnswerCarries(String path) {
        EntityExchangeResult<String> answer = get(path).returnResult(String.class);
        String id = answer.getResponseHeaders().getFirst("X-Request-Id");

        assertThat(answer.getResponseBody()).contains("\"requestId\":\"" + id + "\"");
    }

    @Test
    void tellsNothingInternalOfAFailureButWhatToQuote() {
        RestTestClient.ResponseSpec answer = get("fail/internal");
        String id = answer.returnResult(String.class).getResponseHeaders().getFirst("X-Request-Id");

        problem(get("fail/internal"), 500, "internal")
                .jsonPath("$.requestId")
                .value(
                        String.class,
                        quoted -> assertThat(quoted).matches("[0-9a-f]{16}").isNotEqualTo(id))
                .jsonPath("$.detail")
                .value(String.class, d -> assertThat(d).doesNotContain("secret").doesNotContain("jdbc"));
    }

    @Test
    void namesTheMethodsThatAnAddressTakes() {
        problem(
                        studio.api(Role.DESIGNER)
                                .delete()
                                .uri("/api/v1/faults/vehicle")
                                .exchange()
                                .expectHeader()
                                .valueEquals("Allow", "POST"),
                        405,
                        "method-not-allowed")
                .jsonPath("$.detail")
                .isEqualTo("This address takes POST, not DELETE.");
    }

    @Test
    void namesTheKindsOfContentThatACallTakesAndGives() {
        problem(
                        studio.api(Role.DESIGNER)
                                .post()
                                .uri("/api/v1/faults/vehicle")
                                .contentType(MediaType.TEXT_PLAIN)
                                .body("x")
                                .exchange(),
                        415,
                        "unsupported-media")
                .jsonPath("$.detail")
                .isEqualTo("This call takes application/json; sent was text/plain.");
        problem(
                        studio.api(Role.DESIGNER)
                                .get()
                                .uri("/api/v1/faults/number?diameterMm=1")
                                .accept(MediaType.IMAGE_PNG)
                                .exchange(),
                        406,
                        "not-acceptable")
                .jsonPath("$.detail")
                .isEqualTo("This answer is to be had as text/plain.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"???", "/", "application/json; charset=none", "multipart/form-data; boundary=", ";"})
    void neverFailsOverAKindOfContent(String type) throws IOException, InterruptedException {
        for (String call : new String[] {"vehicle", "file"}) {
            HttpRequest request = HttpRequest.newBuilder(URI.create(studio.address() + "/api/v1/faults/" + call))
                    .header("Authorization", "Bearer " + studio.token(Role.DESIGNER))
                    .header("Content-Type", type)
                    .header("Idempotency-Key", "k" + type.hashCode())
                    .POST(HttpRequest.BodyPublishers.ofString("{}"))
                    .build();
            HttpResponse<String> answer =
                    HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());

            assertThat(answer.statusCode()).as(answer.body()).isBetween(400, 422);
            assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"multipart/form-data", "multipart/form-data; boundary=x"})
    void saysThatAFileIsMissingOrUnreadable(String type) {
        for (String body :
                new String[] {"", "x", "--x", "--x\r\nContent-Disposition: form-data; name=\"file\"\r\n\r\n"}) {
            problem(
                    studio.api(Role.DESIGNER)
                            .post()
                            .uri("/api/v1/faults/file")
                            .header("Content-Type", type)
                            .body(body)
                            .exchange(),
                    400,
                    "malformed");
        }
    }

    @Test
    void tellsPeopleOnAPage() {
        HttpResponse<String> missing = studio.browser(Role.DESIGNER).get("/no/such/page");
        HttpResponse<String> taken = studio.browser(Role.DESIGNER).get("/faults/conflict");
        HttpResponse<String> fields = studio.browser(Role.DESIGNER).get("/faults/impossible");
        HttpResponse<String> failed = studio.browser(Role.DESIGNER).get("/faults/internal");

        assertThat(missing.statusCode()).isEqualTo(404);
        assertThat(missing.headers().firstValue("Content-Type"))
                .hasValueSatisfying(t -> assertThat(t).startsWith("text/html"));
        assertThat(missing.body()).contains("There is nothing at /no/such/page.");
        assertThat(taken.statusCode()).isEqualTo(409);
        assertThat(taken.body()).contains("The name is taken.");
        assertThat(fields.statusCode()).isEqualTo(422);
        assertThat(fields.body()).contains("Two fields.").contains("A.").contains("B.");
        assertThat(failed.statusCode()).isEqualTo(500);
        assertThat(failed.body())
                .contains(failed.headers().firstValue("X-Request-Id").orElseThrow())
                .doesNotContain("secret")
                .doesNotContain("Exception");
    }

    @Test
    void explainsAFormThatWasOpenForTooLong() {
        HttpResponse<String> answer = studio.browser(Role.DESIGNER).post("/account/password", java.util.Map.of());

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("Load the page again");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/%00",
                "/a;b=c",
                "/a%2fb",
                "/..%2f",
                "/%ff%fe",
                "/a//b",
                "/api/v1/tyres;x",
                "/api/v1/%2e%2e/people",
                "/?a=%ff",
                "/error",
                "/api/v1/faults/number?diameterMm=%00"
            })
    void neverFailsOverAnAddress(String path) {
        int page = studio.browser(Role.LEAD).get(path).statusCode();
        int call = studio.api(Role.LEAD)
                .method(HttpMethod.GET)
                .uri(java.net.URI.create(studio.address() + path))
                .exchange()
                .returnResult(String.class)
                .getStatus()
                .value();

        assertThat(page).isLessThan(500);
        assertThat(call).isLessThan(500);
    }

    private String detail(String json) {
        return new String(
                        post(json).expectBody().returnResult().getResponseBodyContent(),
                        java.nio.charset.StandardCharsets.UTF_8)
                .replace("\\\"", "\"");
    }

    private RestTestClient.ResponseSpec get(String path) {
        return studio.api(Role.DESIGNER).get().uri("/api/v1/faults/" + path).exchange();
    }

    private RestTestClient.ResponseSpec post(String json) {
        return post("vehicle", json);
    }

    private RestTestClient.ResponseSpec post(String path, String json) {
        return studio.api(Role.DESIGNER)
                .post()
                .uri("/api/v1/faults/" + path)
                .contentType(MediaType.APPLICATION_JSON)
                .body(json)
                .exchange();
    }

    private static BodyContentSpec problem(RestTestClient.ResponseSpec answer, int status, String slug) {
        return answer.expectStatus()
                .isEqualTo(status)
                .expectHeader()
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .expectBody()
                .jsonPath("$.type")
                .isEqualTo("/problems/" + slug)
                .jsonPath("$.status")
                .isEqualTo(status);
    }
}
