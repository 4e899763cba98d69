package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import studio.stancebook.access.Role;

/** Proposals through the API. */
abstract class ProposalCallsTest extends ProposalClient {
    private static void assertOnly(List<?> found, double expected) {
        assertThat(found).hasSize(1);
        assertThat(((Number) found.get(0)).doubleValue()).isCloseTo(expected, offset(1e-9));
    }

    @Test
    void makesAProposalWithItsFirstRevision() {
        Made made = make(Role.DESIGNER, 2800);

        get(Role.VIEWER, made.path())
                .expectStatus()
                .isOk()
                .expectHeader()
                .valueEquals(HttpHeaders.ETAG, made.tag())
                .expectBody()
                .jsonPath("$.name")
                .isEqualTo("Tern")
                .jsonPath("$.segment")
                .isEqualTo(segment)
                .jsonPath("$.stage")
                .isEqualTo("draft")
                .jsonPath("$.owner.name")
                .isEqualTo("Designer of the tests")
                .jsonPath("$.revision")
                .isEqualTo(1)
                .jsonPath("$.dimensions.wheelbase")
                .isEqualTo(2800)
                .jsonPath("$.note")
                .isEqualTo("First sketch")
                .jsonPath("$.outside")
                .isEqualTo(1);
    }

    /** 2800 / 700 = 4 against 3 to 3.5: 0.5 over, once the band's width; 2450 / 700 = 2800 / 800 = 3.5. */
    @Test
    void tellsTheAssessment() {
        Made made = make(Role.DESIGNER, 2800);
        String line = "$.verdicts[?(@.measure=='wheelbase-in-wheels')]";
        String move = line + ".singleMoves[?(@.dimension=='";

        get(Role.VIEWER, made.path() + "/assessment")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.segment")
                .isEqualTo(segment)
                .jsonPath("$.revision")
                .isEqualTo(1)
                .jsonPath(line + ".verdict")
                .isEqualTo("outside-high")
                .jsonPath(line + ".value")
                .isEqualTo(4.0)
                .jsonPath(line + ".uncertainty")
                .isEqualTo(0.0)
                .jsonPath(line + ".lower")
                .isEqualTo(3.0)
                .jsonPath(line + ".upper")
                .isEqualTo(3.5)
                .jsonPath(line + ".bandVersion")
                .isEqualTo(1)
                .jsonPath(line + ".by")
                .isEqualTo(0.5)
                .jsonPath(line + ".byBandWidths")
                .isEqualTo(1.0)
                .jsonPath(move + "wheelbase')].change")
                .value(List.class, change -> assertOnly(change, -350))
                .jsonPath(move + "tyreDiameter')].change")
                .value(List.class, change -> assertOnly(change, 100))
                .jsonPath("$.verdicts[?(@.measure=='height-in-wheels')].verdict")
                .isEqualTo("not-measurable")
                .jsonPath("$.verdicts[?(@.measure=='height-in-wheels')].missing[0]")
                .isEqualTo("overallHeight, or roofApex")
                .jsonPath("$.verdicts[?(@.measure=='wheels-spanned')].verdict")
                .isEqualTo("no-band");
    }

    @Test
    void keepsTheOldRevisionWhenANewOneIsAdded() {
        Made made = make(Role.DESIGNER, 2800);
        Map<String, ?> shorter = Map.of("dimensions", dimensions(2310), "note", "Shorter");

        send(Role.DESIGNER, HttpMethod.POST, made.path() + "/revisions", made.tag(), shorter)
                .expectStatus()
                .isCreated()
                .expectHeader()
                .valueEquals(HttpHeaders.LOCATION, made.path() + "/revisions/2")
                .expectBody()
                .jsonPath("$.revision")
                .isEqualTo(2)
                .jsonPath("$.outside")
                .isEqualTo(0);

        get(Role.VIEWER, made.path() + "/revisions")
                .expectBody()
                .jsonPath("$.total")
                .isEqualTo(2)
                .jsonPath("$.items[0].note")
                .isEqualTo("Shorter")
                .jsonPath("$.items[1].outside")
                .isEqualTo(1);
        get(Role.VIEWER, made.path() + "/revisions/1")
                .expectBody()
                .jsonPath("$.dimensions.wheelbase")
                .isEqualTo(2800);
        get(Role.VIEWER, made.path() + "/assessment?revision=1")
                .expectBody()
                .jsonPath("$.outside")
                .isEqualTo(1);
        get(Role.VIEWER, made.path() + "/revisions/3").expectStatus().isNotFound();
        get(Role.VIEWER, made.path() + "/assessment?revision=0").expectStatus().isNotFound();
    }

    @Test
    void needsTheVersionThatAChangeIsMadeFrom() {
        Made made = make(Role.DESIGNER, 2800);
        Map<String, ?> revision = Map.of("dimensions", dimensions(2310));
        Map<String, ?> change = Map.of("name", "Tern long", "segment", segment, "stage", "for-review");

        send(Role.DESIGNER, HttpMethod.POST, made.path() + "/revisions", null, revision)
                .expectStatus()
                .isEqualTo(428);
        send(Role.DESIGNER, HttpMethod.POST, made.path() + "/revisions", "\"99\"", revision)
                .expectStatus()
                .isEqualTo(412);
        send(Role.DESIGNER, HttpMethod.PUT, made.path(), null, change)
                .expectStatus()
                .isEqualTo(428);
        send(Role.DESIGNER, HttpMethod.PUT, made.path(), made.tag(), change)
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.name")
                .isEqualTo("Tern long")
                .jsonPath("$.stage")
                .isEqualTo("for-review")
                .jsonPath("$.revision")
                .isEqualTo(1);
        send(Role.DESIGNER, HttpMethod.POST, made.path() + "/revisions", made.tag(), revision)
                .expectStatus()
                .isEqualTo(412);
    }

    @Test
    void namesEveryFieldThatCannotBeAccepted() {
        Map<String, Object> body = body(2800);
        body.put("name", " ");
        body.put(
                "dimensions",
                Map.of(
                        "wheelbase",
                        2800,
                        "overallLength",
                        4700,
                        "frontOverhang",
                        900,
                        "rearOverhang",
                        1100,
                        "overallHeight",
                        20));

        send(Role.DESIGNER, HttpMethod.POST, PROPOSALS, null, body)
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[?(@.field=='name')]")
                .exists()
                .jsonPath("$.errors[?(@.field=='dimensions.overallHeight')]")
                .exists()
                .jsonPath("$.errors[?(@.field=='dimensions.overallLength')]")
                .exists();
        send(Role.DESIGNER, HttpMethod.POST, PROPOSALS, null, Map.of("name", "Tern", "segment", segment))
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("dimensions");
        body.put("segment", "no-such-segment");
        body.put("name", "Tern");
        body.put("dimensions", dimensions(2800));
        send(Role.DESIGNER, HttpMethod.POST, PROPOSALS, null, body)
                .expectStatus()
                .isNotFound();
    }

    @Test
    void takesASketchWithoutDimensionAndSaysSo() {
        Map<String, Object> body = body(4);
        body.put(
                "dimensions",
                Map.of("scale", "unscaled", "wheelbase", 4.2, "frontTyreDiameter", 1, "rearTyreDiameter", 1));

        EntityExchangeResult<byte[]> made = send(Role.DESIGNER, HttpMethod.POST, PROPOSALS, null, body)
                .expectStatus()
                .isCreated()
                .expectBody()
                .jsonPath("$.scale")
                .isEqualTo("unscaled")
                .returnResult();

        get(Role.VIEWER, made.getResponseHeaders().getLocation() + "/assessment")
                .expectBody()
                .jsonPath("$.scale")
                .isEqualTo("unscaled")
                .jsonPath("$.verdicts[?(@.measure=='wheelbase-in-wheels')].by")
                .value(
                        java.util.List.class,
                        by -> assertThat((Double) by.get(0))
                                .isCloseTo(0.7, org.assertj.core.data.Offset.offset(1e-12)));
    }

    @Test
    void areListedByStageAndSorted() {
        Made made = make(Role.DESIGNER, 2800);
        make(Role.DESIGNER, 2310);
        send(
                        Role.DESIGNER,
                        HttpMethod.PUT,
                        made.path(),
                        made.tag(),
                        Map.of("name", "Avocet", "segment", segment, "stage", "for-review"))
                .expectStatus()
                .isOk();

        get(Role.LEAD, PROPOSALS + "?segment=" + segment + "&stage=for-review")
                .expectBody()
                .jsonPath("$.total")
                .isEqualTo(1)
                .jsonPath("$.items[0].name")
                .isEqualTo("Avocet")
                .jsonPath("$.items[0].outside")
                .isEqualTo(1);
        get(Role.LEAD, PROPOSALS + "?segment=" + segment + "&sort=name,desc")
                .expectBody()
                .jsonPath("$.items[0].name")
                .isEqualTo("Tern");
        get(Role.LEAD, PROPOSALS + "?sort=secret").expectStatus().isBadRequest();
        get(Role.LEAD, PROPOSALS + "?stage=dreamt").expectStatus().isBadRequest();
        get(Role.LEAD, PROPOSALS + "?segment=none-such").expectStatus().isNotFound();
    }
}
