package studio.stancebook.catalogue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

/** Segments and the statistics of their classes over HTTP. */
abstract class SegmentCallsTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    private ResponseSpec send(Role role, HttpMethod method, String uri, String body, String... header) {
        var request = studio.api(role).method(method).uri(uri).contentType(MediaType.APPLICATION_JSON);
        for (int i = 0; i < header.length; i += 2) {
            request = request.header(header[i], header[i + 1]);
        }
        return (body.isEmpty() ? request : request.body(body)).exchange();
    }

    private static String body(String key, String name) {
        return "{\"key\": \"%s\", \"name\": \"%s\", \"description\": \"Invented\"}".formatted(key, name);
    }

    @Test
    void areMadeByTheLeadReadAndChanged() {
        String key = Invented.key("estate");

        send(Role.LEAD, HttpMethod.POST, "/api/v1/segments", body(key, "Estates"))
                .expectStatus()
                .isCreated()
                .expectHeader()
                .valueEquals(HttpHeaders.LOCATION, "/api/v1/segments/" + key);
        String uri = "/api/v1/segments/" + key;
        send(Role.VIEWER, HttpMethod.GET, uri, "")
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"0\"")
                .expectBody()
                .jsonPath("$.key")
                .isEqualTo(key)
                .jsonPath("$.name")
                .isEqualTo("Estates")
                .jsonPath("$.description")
                .isEqualTo("Invented");
        send(Role.LEAD, HttpMethod.PUT, uri, body(key, "Longer estates"))
                .expectStatus()
                .isEqualTo(428);
        send(Role.LEAD, HttpMethod.PUT, uri, body(key, "Longer estates"), "If-Match", "\"0\"")
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, "\"1\"");
        send(Role.LEAD, HttpMethod.PUT, uri, body(key, "Estates"), "If-Match", "\"0\"")
                .expectStatus()
                .isEqualTo(412);
        send(Role.LEAD, HttpMethod.POST, "/api/v1/segments", body(key, "Twice"))
                .expectStatus()
                .isEqualTo(409);
        send(Role.VIEWER, HttpMethod.GET, "/api/v1/segments?size=1", "")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.items.length()")
                .isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"LEAD"},
            mode = EnumSource.Mode.EXCLUDE)
    void areMadeByNobodyElse(Role role) {
        send(role, HttpMethod.POST, "/api/v1/segments", body(Invented.key("theirs"), "Theirs"))
                .expectStatus()
                .isForbidden();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Big", "-big", "with blank", "umläut", "a/b"})
    void areRefusedUnderAKeyThatIsNone(String key) {
        send(Role.LEAD, HttpMethod.POST, "/api/v1/segments", body(key, "Name"))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("key");
    }

    /** Five values 3.8, 3.9, 4.0, 4.1, 4.4: mean 4.04; by hand, type 7 quantiles at (n - 1) p + 1. */
    @Test
    void giveTheStatisticsOfTheirClass() {
        String key = Invented.key("statistics");
        segments.create(key, "Statistics", "");
        catalogue.addAll(
                List.of(
                        Invented.draft(key, "A", 2660),
                        Invented.draft(key, "B", 2730),
                        Invented.draft(key, "C", 2800),
                        Invented.draft(key, "D", 2870),
                        Invented.draft(key, "E", 3080)),
                new Author(null, "Lead"));
        String uri = "/api/v1/segments/" + key + "/statistics";

        send(Role.VIEWER, HttpMethod.GET, uri, "")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.segment")
                .isEqualTo(key)
                .jsonPath("$.packages")
                .isEqualTo(5)
                .jsonPath("$.quantileType")
                .isEqualTo(7)
                .jsonPath("$.measures[0].measure")
                .isEqualTo("wheelbase-in-wheels")
                .jsonPath("$.measures[0].unit")
                .isEqualTo("ratio")
                .jsonPath("$.measures[0].n")
                .isEqualTo(5)
                .jsonPath("$.measures[0].median")
                .isEqualTo(4.0)
                .jsonPath("$.measures[0].p25")
                .isEqualTo(3.9)
                .jsonPath("$.measures[2].measure")
                .isEqualTo("length-in-wheels")
                .jsonPath("$.measures[2].n")
                .isEqualTo(0)
                .jsonPath("$.measures[2].mean")
                .isEmpty();
        send(Role.VIEWER, HttpMethod.GET, uri + "?fromYear=2021", "")
                .expectBody()
                .jsonPath("$.packages")
                .isEqualTo(0);
        send(Role.VIEWER, HttpMethod.GET, uri + "?origin=specification,measured", "")
                .expectBody()
                .jsonPath("$.packages")
                .isEqualTo(5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"quantileType=5", "quantileType=seven", "origin=hearsay", "fromYear=2020&toYear=2019"})
    void giveNoStatisticsForParametersThatCannotBe(String parameters) {
        String key = Invented.key("statistics");
        segments.create(key, "Statistics", "");

        send(Role.VIEWER, HttpMethod.GET, "/api/v1/segments/" + key + "/statistics?" + parameters, "")
                .expectStatus()
                .isBadRequest();
    }

    @Test
    void areNotFoundUnderAnUnknownKey() {
        send(Role.VIEWER, HttpMethod.GET, "/api/v1/segments/no-such-segment/statistics", "")
                .expectStatus()
                .isNotFound();
        send(Role.VIEWER, HttpMethod.GET, "/api/v1/segments/no-such-segment", "")
                .expectStatus()
                .isNotFound();
        send(Role.VIEWER, HttpMethod.GET, "/api/v1/segments/no-such-segment/queries", "")
                .expectStatus()
                .isNotFound();
    }
}
