package studio.stancebook.proposal;

import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.statistics.BandMethod;

/** Sends proposals to the API, in a segment with one band. */
abstract class ProposalClient {
    static final String PROPOSALS = "/api/v1/proposals";

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Bands bands;

    String segment = "";

    @BeforeEach
    void makeSegmentWithABand() {
        segment = Invented.key("proposal-calls");
        segments.create(segment, "Segment of a test", "");
        bands.set(
                segment,
                "wheelbase-in-wheels",
                BandSetting.of(new BandMethod.Rule(3, 3.5, "Of a test")),
                "Of a test",
                null,
                new Author(null, "Lead"));
    }

    /** 4 wheels exactly, without uncertainty. */
    static Map<String, Object> dimensions(double wheelbase) {
        return Map.of(
                "wheelbase",
                wheelbase,
                "frontTyreDiameter",
                700,
                "rearTyreDiameter",
                700,
                "uncertainties",
                Map.of("wheelbase", 0, "frontTyreDiameter", 0));
    }

    Map<String, Object> body(double wheelbase) {
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("name", "Tern");
        body.put("segment", segment);
        body.put("dimensions", dimensions(wheelbase));
        body.put("note", "First sketch");
        return body;
    }

    RestTestClient.ResponseSpec send(
            Role role, HttpMethod method, String path, @Nullable String ifMatch, Map<String, ?> body) {
        RestTestClient.RequestBodySpec request =
                studio.api(role).method(method).uri(path).contentType(MediaType.APPLICATION_JSON);
        if (ifMatch != null) {
            request.header(HttpHeaders.IF_MATCH, ifMatch);
        }
        return request.body(body).exchange();
    }

    /** A proposal with the address and the version that the answer gave. */
    record Made(String path, String tag) {}

    Made make(Role role, double wheelbase) {
        EntityExchangeResult<byte[]> made = send(role, HttpMethod.POST, PROPOSALS, null, body(wheelbase))
                .expectStatus()
                .isCreated()
                .expectBody()
                .returnResult();
        URI location = Objects.requireNonNull(made.getResponseHeaders().getLocation());
        return new Made(
                location.toString(),
                Objects.requireNonNull(made.getResponseHeaders().getETag()));
    }

    RestTestClient.ResponseSpec get(Role role, String path) {
        return studio.api(role).get().uri(path).exchange();
    }
}
