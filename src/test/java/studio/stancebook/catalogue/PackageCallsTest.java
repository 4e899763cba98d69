package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient.ResponseSpec;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.classes.ClassSnapshots;

/** Benchmark packages over HTTP. */
abstract class PackageCallsTest {

    private static final String BODY = """
            {"name": "%s", "segment": "%s", "modelYear": 2021, "origin": "specification",
             "dimensions": {"frontTyre": "225/45R17", "rearTyre": "225/45R17", "wheelbase": %s, "overallHeight": 1500}}""";

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    EntityManagerFactory entities;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("calls");
        segments.create(segment, "Segment of a test", "");
    }

    private ResponseSpec send(Role role, HttpMethod method, String uri, String body, String... header) {
        var request = studio.api(role).method(method).uri(uri).contentType(MediaType.APPLICATION_JSON);
        for (int i = 0; i < header.length; i += 2) {
            request = request.header(header[i], header[i + 1]);
        }
        return (body.isEmpty() ? request : request.body(body)).exchange();
    }

    private ResponseSpec post(Role role, String body) {
        return send(role, HttpMethod.POST, "/api/v1/packages", body);
    }

    private String body(String name, Object wheelbase) {
        return BODY.formatted(name, segment, wheelbase);
    }

    private long added(String name, double wheelbase) {
        return catalogue
                .add(Invented.draft(segment, name, wheelbase), new Author(null, "Designer"))
                .id();
    }

    /** 225/45R17: section height 101.25, rounded 101; rim 17 x 25.4 = 431.8, rounded 432; so D = 634 (UN R30). */
    @Test
    void areRecordedMeasuredAndReadBack() {
        String location = post(Role.DESIGNER, body("Invented saloon", 2712.4))
                .expectStatus()
                .isCreated()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"0\"")
                .returnResult(String.class)
                .getResponseHeaders()
                .getFirst(HttpHeaders.LOCATION);

        send(Role.VIEWER, HttpMethod.GET, String.valueOf(location), "")
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"0\"")
                .expectBody()
                .jsonPath("$.name")
                .isEqualTo("Invented saloon")
                .jsonPath("$.segment")
                .isEqualTo(segment)
                .jsonPath("$.modelYear")
                .isEqualTo(2021)
                .jsonPath("$.origin")
                .isEqualTo("specification")
                .jsonPath("$.dimensions.frontTyre")
                .isEqualTo("225/45R17")
                .jsonPath("$.dimensions.wheelbase")
                .isEqualTo(2712.4)
                .jsonPath("$.recorded.wheelbase.by")
                .isEqualTo("Designer of the tests")
                .jsonPath("$.measures.wheelbase-in-wheels.value")
                .isEqualTo(2712.4 / 634)
                .jsonPath("$.measures.length-in-wheels.missing[0]")
                .isEqualTo("overallLength, or frontOverhang and rearOverhang")
                .jsonPath("$.measures.length-in-wheels.value")
                .doesNotExist()
                .jsonPath("$.setAside")
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"TUTOR", "LEARNER", "VIEWER"})
    void areWrittenByLeadsAndDesignersOnly(Role role) {
        long id = added("Not theirs", 2700);
        String uri = "/api/v1/packages/" + id;

        post(role, body("Theirs", 2700)).expectStatus().isForbidden();
        send(role, HttpMethod.PUT, uri, body("Theirs", 2700), "If-Match", "\"0\"")
                .expectStatus()
                .isForbidden();
        send(role, HttpMethod.DELETE, uri, "", "If-Match", "\"0\"")
                .expectStatus()
                .isForbidden();
        send(role, HttpMethod.PUT, uri + "/set-aside", "{\"reason\": \"no\"}", "If-Match", "\"0\"")
                .expectStatus()
                .isForbidden();
        send(role, HttpMethod.GET, uri, "").expectStatus().isOk();
    }

    @Test
    void areReadBySignedInPeopleOnly() {
        studio.anonymous()
                .get()
                .uri("/api/v1/packages")
                .exchange()
                .expectStatus()
                .isUnauthorized();
    }

    @Test
    void areChangedOnlyOnTopOfTheVersionThatIsThere() {
        long id = added("Changing", 2700);
        String uri = "/api/v1/packages/" + id;

        send(Role.DESIGNER, HttpMethod.PUT, uri, body("Changing", 2710))
                .expectStatus()
                .isEqualTo(428);
        send(Role.DESIGNER, HttpMethod.PUT, uri, body("Changing", 2710), "If-Match", "0")
                .expectStatus()
                .isBadRequest();
        send(Role.DESIGNER, HttpMethod.PUT, uri, body("Changing", 2710), "If-Match", "\"0\"")
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"1\"");
        send(Role.DESIGNER, HttpMethod.PUT, uri, body("Changing", 2720), "If-Match", "\"0\"")
                .expectStatus()
                .isEqualTo(412)
                .expectBody()
                .jsonPath("$.type")
                .isEqualTo("/problems/stale");
        send(Role.DESIGNER, HttpMethod.DELETE, uri, "").expectStatus().isEqualTo(428);
        send(Role.DESIGNER, HttpMethod.DELETE, uri, "", "If-Match", "\"1\"")
                .expectStatus()
                .isNoContent();
        send(Role.DESIGNER, HttpMethod.GET, uri, "").expectStatus().isNotFound();
    }

    @Test
    void areRefusedWithEveryFieldThatIsWrong() {
        post(Role.DESIGNER, """
                        {"name": " ", "segment": "%s", "modelYear": 1700, "origin": "hearsay",
                         "dimensions": {"wheelbase": "long", "spoiler": 3}}""".formatted(segment))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[*].field")
                .value(fields -> assertThat((List<?>) fields)
                        .isEqualTo(
                                List.of("name", "modelYear", "origin", "dimensions.wheelbase", "dimensions.spoiler")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {"wheelbase": 280}                      | dimensions.wheelbase     | 1000 to 6000
                    {"overallHeight": 1500}                 | dimensions.wheelbase     | L101
                    {"wheelbase": 2700, "overallLength": 4600, "frontOverhang": 800, "rearOverhang": 900} | dimensions.overallLength | 200
                    {"wheelbase": 2700, "frontTyre": "big"} | dimensions.frontTyre     | 265/70R17""")
    void areRefusedWithTheReasonForAnImpossibleDimension(String dimensions, String field, String words) {
        post(
                        Role.DESIGNER,
                        "{\"name\": \"Impossible\", \"segment\": \"%s\", \"dimensions\": %s}"
                                .formatted(segment, dimensions))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo(field)
                .jsonPath("$.errors[0].message")
                .value(message -> assertThat(String.valueOf(message)).contains(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[]", "\"text\"", "{\"modelYear\": \"soon\"}", "{\"dimensions\": []}"})
    void areRefusedAsMalformedWhenTheyAreNoPackage(String body) {
        post(Role.DESIGNER, body).expectStatus().isBadRequest();
    }

    @Test
    void areRefusedUnderANameThatIsTakenAndInASegmentThatIsNotThere() {
        post(Role.DESIGNER, body("Once", 2700)).expectStatus().isCreated();
        post(Role.DESIGNER, body("Once", 2700)).expectStatus().isEqualTo(409);
        post(Role.DESIGNER, BODY.formatted("Nowhere", "no-such-segment", 2700))
                .expectStatus()
                .isNotFound();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\\u0000b", "a\\nb", "a\\u2028b"})
    void areRefusedWithControlCharactersInTheName(String name) {
        post(Role.DESIGNER, body(name, 2700))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("name");
    }

    @Test
    void areListedByFilterInTheOrderAskedFor() {
        added("Invented long", 2870);
        added("Invented short", 2660);
        added("Invented middle", 2800);
        String uri = "/api/v1/packages?segment=" + segment;

        assertThat(names(uri + "&sort=wheelbase-in-wheels,desc"))
                .isEqualTo(List.of("Invented long", "Invented middle", "Invented short"));
        assertThat(names(uri + "&measure=wheelbase-in-wheels&min=3.9&max=4.05")).isEqualTo(List.of("Invented middle"));
        assertThat(names(uri + "&q=LONG")).isEqualTo(List.of("Invented long"));
        assertThat(names(uri + "&q=%25")).isEqualTo(List.of());
        assertThat(names(uri + "&fromYear=2021")).isEqualTo(List.of());
        assertThat(names(uri + "&origin=measured")).isEqualTo(List.of());
        assertThat(names(uri + "&size=2&page=1")).isEqualTo(List.of("Invented short"));
    }

    private List<?> names(String uri) {
        Map<?, ?> answer = studio.api(Role.VIEWER)
                .get()
                .uri(java.net.URI.create(studio.address() + uri))
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody(Map.class)
                .returnResult()
                .getResponseBody();
        List<?> items = (List<?>) java.util.Objects.requireNonNull(answer).get("items");
        return items.stream().map(item -> ((Map<?, ?>) item).get("name")).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sort=colour",
                "measure=no-such-measure&min=1",
                "min=3",
                "measure=wheelbase-in-wheels&min=4&max=3",
                "measure=wheelbase-in-wheels&min=NaN",
                "fromYear=2020&toYear=2010",
                "fromYear=soon",
                "origin=hearsay",
                "page=-1"
            })
    void areNotListedByAFilterThatCannotBe(String filter) {
        send(Role.VIEWER, HttpMethod.GET, "/api/v1/packages?" + filter, "")
                .expectStatus()
                .isBadRequest()
                .expectBody()
                .jsonPath("$.errors[0].field")
                .exists();
    }

    @Test
    void areListedWithAsManyQueriesForManyAsForFew() {
        for (int i = 0; i < 3; i++) {
            added("Invented " + i, 2700 + i);
        }
        long forThree = statementsFor("/api/v1/packages?segment=" + segment);
        for (int i = 3; i < 20; i++) {
            added("Invented " + i, 2700 + i);
        }

        assertThat(statementsFor("/api/v1/packages?segment=" + segment))
                .isEqualTo(forThree)
                .isLessThanOrEqualTo(7);
    }

    /** The fewest of three times: now and then the list of measures is read again as well, whatever is listed. */
    private long statementsFor(String uri) {
        return IntStream.range(0, 3)
                .mapToLong(time -> statementsOnce(uri))
                .min()
                .orElseThrow();
    }

    private long statementsOnce(String uri) {
        Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        names(uri);
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);
        return statements;
    }

    @Test
    void areSetAsideWithAReasonAndTakenBack() {
        long id = added("Set aside", 2800);
        String uri = "/api/v1/packages/" + id + "/set-aside";

        send(Role.LEAD, HttpMethod.PUT, uri, "{\"reason\": \" \"}", "If-Match", "\"0\"")
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("reason");
        send(Role.LEAD, HttpMethod.PUT, uri, "{\"reason\": \"A prototype\"}")
                .expectStatus()
                .isEqualTo(428);
        send(Role.LEAD, HttpMethod.PUT, uri, "{\"reason\": \"A prototype\"}", "If-Match", "\"0\"")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.setAside.reason")
                .isEqualTo("A prototype")
                .jsonPath("$.setAside.by")
                .isEqualTo("Lead of the tests");
        assertThat(count()).isZero();
        send(Role.DESIGNER, HttpMethod.DELETE, uri, "", "If-Match", "\"1\"")
                .expectStatus()
                .isOk();
        assertThat(count()).isEqualTo(1);
        send(Role.DESIGNER, HttpMethod.DELETE, uri, "", "If-Match", "\"2\"")
                .expectStatus()
                .isEqualTo(409);
    }

    @Test
    void haveSingleValuesSetAside() {
        long id = added("Partly set aside", 2800);
        String uri = "/api/v1/packages/" + id + "/values/";
        String reason = "{\"reason\": \"Roof rack counted\"}";

        send(Role.LEAD, HttpMethod.PUT, uri + "spoiler/set-aside", reason, "If-Match", "\"0\"")
                .expectStatus()
                .isEqualTo(422);
        send(Role.LEAD, HttpMethod.PUT, uri + "overallHeight/set-aside", reason, "If-Match", "\"0\"")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.valuesSetAside.overallHeight.reason")
                .isEqualTo("Roof rack counted");
        send(Role.LEAD, HttpMethod.DELETE, uri + "wheelbase/set-aside", "", "If-Match", "\"1\"")
                .expectStatus()
                .isNotFound();
        send(Role.LEAD, HttpMethod.DELETE, uri + "overallHeight/set-aside", "", "If-Match", "\"1\"")
                .expectStatus()
                .isOk();
    }

    private int count() {
        return snapshots.of(segment).packages();
    }

    @Autowired
    ClassSnapshots snapshots;

    @Test
    void haveTheirQueriesSettled() {
        added("A", 2700);
        long id = added("A again", 2700);
        long query = catalogue.get(id).openQueries().get(0).id();
        String uri = "/api/v1/packages/" + id + "/queries/" + query + "/settlement";

        send(Role.VIEWER, HttpMethod.GET, "/api/v1/segments/" + segment + "/queries", "")
                .expectBody()
                .jsonPath("$.items[0].packageName")
                .isEqualTo("A again")
                .jsonPath("$.items[0].query.cause")
                .isEqualTo("SAME_DIMENSIONS");
        send(Role.DESIGNER, HttpMethod.PUT, uri, "{\"answer\": \" \"}")
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("answer");
        send(Role.DESIGNER, HttpMethod.PUT, uri, "{\"answer\": \"A sister model\"}")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.queries[0].settlement.answer")
                .isEqualTo("A sister model");
        send(Role.DESIGNER, HttpMethod.DELETE, uri, "").expectStatus().isOk();
        send(Role.DESIGNER, HttpMethod.PUT, "/api/v1/packages/" + id + "/queries/0/settlement", "{\"answer\": \"x\"}")
                .expectStatus()
                .isNotFound();
    }
}
