package studio.stancebook.band;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;

/** Bands through the API. */
abstract class BandCallsTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("band-calls");
        segments.create(segment, "Segment of a test", "");
    }

    /** Tyres of 700 mm: 3, 4, 5, 6 and 7 wheels. */
    private void fillClass(int packages) {
        for (int i = 0; i < packages; i++) {
            catalogue.add(Invented.draft(segment, "Invented " + i, 2100 + 700 * i), new Author(null, "Tests"));
        }
    }

    private RestTestClient.ResponseSpec put(Role role, String measure, @Nullable String ifMatch, Map<String, ?> body) {
        RestTestClient.RequestBodySpec request = studio.api(role)
                .put()
                .uri("/api/v1/segments/{segment}/bands/{measure}", segment, measure)
                .contentType(MediaType.APPLICATION_JSON);
        if (ifMatch != null) {
            request.header(HttpHeaders.IF_MATCH, ifMatch);
        }
        return request.body(body).exchange();
    }

    private static Map<String, Object> rule(double lower, double upper) {
        return Map.of("method", "rule", "lower", lower, "upper", upper, "reason", "Drawn so for years");
    }

    private RestTestClient.BodyContentSpec get(String path) {
        return studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/segments/" + segment + "/bands" + path)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody();
    }

    @Test
    void setsARuleAndTellsItBack() {
        put(Role.LEAD, MEASURE, null, rule(3.4, 3.7))
                .expectStatus()
                .isCreated()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"1\"")
                .expectBody()
                .jsonPath("$.version")
                .isEqualTo(1)
                .jsonPath("$.lower")
                .isEqualTo(3.4)
                .jsonPath("$.upper")
                .isEqualTo(3.7)
                .jsonPath("$.n")
                .isEqualTo(0)
                .jsonPath("$.provisional")
                .isEqualTo(false)
                .jsonPath("$.reason")
                .isEqualTo("Drawn so for years")
                .jsonPath("$.by")
                .isEqualTo("Lead of the tests");

        get("").jsonPath("$.items.length()")
                .isEqualTo(1)
                .jsonPath("$.items[0].measure")
                .isEqualTo(MEASURE);
        get("/" + MEASURE).jsonPath("$.version").isEqualTo(1);
    }

    @Test
    void asksForTheVersionOnceThereIsOne() {
        put(Role.LEAD, MEASURE, null, rule(3.4, 3.7)).expectStatus().isCreated();

        put(Role.LEAD, MEASURE, null, rule(3.3, 3.7)).expectStatus().isEqualTo(428);
        put(Role.LEAD, MEASURE, "\"7\"", rule(3.3, 3.7)).expectStatus().isEqualTo(412);
        put(Role.LEAD, MEASURE, "\"1\"", rule(3.3, 3.7))
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"2\"");

        get("/" + MEASURE + "/versions")
                .jsonPath("$.total")
                .isEqualTo(2)
                .jsonPath("$.items[0].lower")
                .isEqualTo(3.3)
                .jsonPath("$.items[1].lower")
                .isEqualTo(3.4);
    }

    @Test
    void leavesASideOpen() {
        put(Role.LEAD, MEASURE, null, Map.of("method", "rule", "lower", 3.4, "reason", "No limit above"))
                .expectStatus()
                .isCreated()
                .expectBody()
                .jsonPath("$.lower")
                .isEqualTo(3.4)
                .jsonPath("$.upper")
                .isEmpty();
    }

    /** Hand case, Hyndman and Fan type 7 of 3, 4, 5, 6, 7: 3 + 0.4 and 7 - 0.4. */
    @Test
    void computesPercentilesOfTheClass() {
        fillClass(5);

        put(Role.LEAD, MEASURE, null, Map.of("method", "percentile", "lowerQuantile", 0.1, "upperQuantile", 0.9))
                .expectStatus()
                .isCreated()
                .expectBody()
                .jsonPath("$.lower")
                .isEqualTo(3.4)
                .jsonPath("$.upper")
                .isEqualTo(6.6)
                .jsonPath("$.n")
                .isEqualTo(5)
                .jsonPath("$.provisional")
                .isEqualTo(true)
                .jsonPath("$.setting.quantileType")
                .isEqualTo(7)
                .jsonPath("$.explanation")
                .isEqualTo("10 % to 90 % quantile (type 7) of 5 values.");
    }

    /** Median 5, median absolute deviation 1: 5 +/- 2 x 1.4826. */
    @Test
    void computesARobustBand() {
        fillClass(5);

        put(Role.LEAD, MEASURE, null, Map.of("method", "robust", "k", 2))
                .expectStatus()
                .isCreated()
                .expectBody()
                .jsonPath("$.lower")
                .value(
                        Double.class,
                        lower -> org.assertj.core.api.Assertions.assertThat(lower)
                                .isCloseTo(5 - 2.9652, org.assertj.core.data.Offset.offset(1e-12)));
    }

    /** 46: the smallest n of a two-sided 90 % / 95 % interval between extremes, reference/wilks_sample_sizes.json. */
    @Test
    void saysHowManyADistributionFreeBandNeeds() {
        fillClass(5);

        put(Role.LEAD, MEASURE, null, Map.of("method", "distribution-free", "content", 0.9, "confidence", 0.95))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.detail")
                .isEqualTo("No band: the class has 5 values, 46 are needed for a distribution-free band that holds 90 %"
                        + " of the population with a confidence of 95 %.");
        get("").jsonPath("$.total").isEqualTo(0);
    }

    @Test
    void computesNothingFromLessThanThree() {
        fillClass(2);

        put(Role.LEAD, MEASURE, null, Map.of("method", "tolerance", "content", 0.9, "confidence", 0.95))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.detail")
                .isEqualTo("No band: the class has 2 values, 3 are needed.");
    }

    @Test
    void takesBackWhatItTold() {
        fillClass(5);
        Map<String, ?> percentile = Map.of(
                "method",
                "percentile",
                "lowerQuantile",
                0.1,
                "upperQuantile",
                0.9,
                "fromYear",
                2000,
                "origins",
                java.util.List.of("specification"));
        byte[] told = put(Role.LEAD, MEASURE, null, percentile)
                .expectStatus()
                .isCreated()
                .expectBody()
                .jsonPath("$.setting.fromYear")
                .isEqualTo(2000)
                .returnResult()
                .getResponseBodyContent();
        String setting = com.jayway.jsonpath.JsonPath.parse(new String(told, java.nio.charset.StandardCharsets.UTF_8))
                .read("$.setting", net.minidev.json.JSONObject.class)
                .toString();

        studio.api(Role.LEAD)
                .put()
                .uri("/api/v1/segments/{segment}/bands/{measure}", segment, MEASURE)
                .contentType(MediaType.APPLICATION_JSON)
                .header(HttpHeaders.IF_MATCH, "\"1\"")
                .body(setting)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.version")
                .isEqualTo(2)
                .jsonPath("$.lower")
                .isEqualTo(3.4);
    }

    @Test
    void withdrawsABandByAVersionThatSaysNone() {
        put(Role.LEAD, MEASURE, null, rule(3.4, 3.7)).expectStatus().isCreated();

        put(Role.LEAD, MEASURE, "\"1\"", Map.of("method", "none"))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("reason");
        put(Role.LEAD, MEASURE, "\"1\"", Map.of("method", "none", "reason", "Says nothing about this market"))
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.inForce")
                .isEqualTo(false)
                .jsonPath("$.lower")
                .isEmpty();

        get("").jsonPath("$.total").isEqualTo(0);
        get("/" + MEASURE)
                .jsonPath("$.version")
                .isEqualTo(2)
                .jsonPath("$.method")
                .isEqualTo("none");
        get("/" + MEASURE + "/versions").jsonPath("$.total").isEqualTo(2);
        put(Role.LEAD, MEASURE, "\"2\"", rule(3.4, 3.7)).expectStatus().isOk();
        get("").jsonPath("$.items[0].version").isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"method\":\"guess\"}|method",
                "{}|method",
                "{\"method\":\"rule\",\"lower\":3.7,\"upper\":3.4,\"reason\":\"x\"}|lower",
                "{\"method\":\"rule\",\"reason\":\"x\"}|lower",
                "{\"method\":\"rule\",\"lower\":3.4}|reason",
                "{\"method\":\"percentile\",\"lowerQuantile\":0.1}|upperQuantile",
                "{\"method\":\"percentile\",\"lowerQuantile\":0.1,\"upperQuantile\":1.2}|upperQuantile",
                "{\"method\":\"percentile\",\"lowerQuantile\":0.1,\"upperQuantile\":0.9,\"quantileType\":5}|quantileType",
                "{\"method\":\"tolerance\",\"content\":1,\"confidence\":0.95}|content",
                "{\"method\":\"robust\",\"k\":0}|k",
                "{\"method\":\"robust\",\"k\":2,\"origins\":[\"rumour\"]}|origins",
                "{\"method\":\"robust\",\"k\":2,\"origins\":[]}|origins"
            })
    void namesTheFieldThatCannotBe(String body, String field) {
        studio.api(Role.LEAD)
                .put()
                .uri("/api/v1/segments/{segment}/bands/{measure}", segment, MEASURE)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange()
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo(field);
    }

    @Test
    void doesNotKnowOtherMeasuresSegmentsOrBands() {
        put(Role.LEAD, "no-such-measure", null, rule(3.4, 3.7)).expectStatus().isNotFound();
        String path = "/api/v1/segments/" + segment + "/bands";
        for (String missing : new String[] {
            path + "/" + MEASURE, path + "/no-such", path + "/no-such/versions", "/api/v1/segments/none-such/bands"
        }) {
            studio.api(Role.LEAD).get().uri(missing).exchange().expectStatus().isNotFound();
        }
    }

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "LEAD")
    void areSetByLeadsOnly(Role role) {
        put(role, MEASURE, null, rule(3.4, 3.7)).expectStatus().isForbidden();
    }
}
