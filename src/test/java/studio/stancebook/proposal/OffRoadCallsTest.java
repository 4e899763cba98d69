package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/**
 * Off-road criteria through the API and on the page. Thresholds: 49 CFR 523.5(b)(2), approach 28, breakover 14, departure 20
 * degrees, running clearance 20 cm, axles 18 cm; Regulation (EU) 2018/858 Annex I, approach 25, departure 20, ramp 20
 * degrees, axles 180 mm, between the axles 200 mm.
 */
@StudioTest
class OffRoadCallsTest extends ProposalClient {

    /** All but the ramp angle is typed or recorded; the ramp is the one that is not measurable. */
    private Map<String, Object> sheet() {
        return Map.of(
                "name",
                "Ouzel",
                "segment",
                segment,
                "dimensions",
                Map.of(
                        "wheelbase", 2850,
                        "approachAngle", 26,
                        "departureAngle", 20,
                        "groundClearance", 210,
                        "frontAxleClearance", 185,
                        "rearAxleClearance", 175));
    }

    private void hasTheJudgement(RestTestClient.ResponseSpec answer) {
        answer.expectStatus().isOk().expectBody().json("""
                {"schemes": [
                  {"scheme": "us-49-cfr-523-5", "needed": 4, "met": 2, "criteria": [
                    {"quantity": "approach-angle", "value": 26.0, "unit": "deg", "atLeast": 28.0, "outcome": "missed",
                     "by": 2.0, "reason": "as typed, not computed from geometry"},
                    {"quantity": "ramp-angle", "value": null, "unit": "deg", "atLeast": 14.0,
                     "outcome": "not-measurable", "by": null},
                    {"quantity": "departure-angle", "value": 20.0, "unit": "deg", "atLeast": 20.0, "outcome": "met",
                     "by": null},
                    {"quantity": "running-clearance", "value": 210.0, "unit": "mm", "atLeast": 200.0, "outcome": "met",
                     "by": null, "reason": null},
                    {"quantity": "axle-clearances", "value": 175.0, "unit": "mm", "atLeast": 180.0,
                     "outcome": "missed", "by": 5.0, "reason": null}]},
                  {"scheme": "eu-m1g", "needed": 5, "met": 4, "criteria": [
                    {"quantity": "approach-angle", "outcome": "met"},
                    {"quantity": "departure-angle", "outcome": "met"},
                    {"quantity": "ramp-angle", "outcome": "not-measurable"},
                    {"quantity": "front-axle-clearance", "outcome": "met", "value": 185.0},
                    {"quantity": "rear-axle-clearance", "outcome": "missed", "by": 5.0},
                    {"quantity": "clearance-between-axles", "outcome": "met", "value": 210.0}]}]}""");
    }

    private String made(String path) {
        EntityExchangeResult<byte[]> made = send(Role.DESIGNER, HttpMethod.POST, path, null, sheet())
                .expectStatus()
                .isCreated()
                .expectBody()
                .returnResult();
        return String.valueOf(made.getResponseHeaders().getLocation());
    }

    @Test
    void judgeAProposal() {
        String proposal = made(PROPOSALS);

        hasTheJudgement(get(Role.VIEWER, proposal + "/off-road"));
        hasTheJudgement(get(Role.VIEWER, proposal + "/off-road?revision=1"));
        get(Role.VIEWER, proposal + "/off-road?revision=2").expectStatus().isNotFound();
    }

    @Test
    void judgeAPackage() {
        hasTheJudgement(get(Role.VIEWER, made("/api/v1/packages") + "/off-road"));
    }

    @Test
    void sayTheCautionAndWhatIsNotChecked() {
        get(Role.VIEWER, made(PROPOSALS) + "/off-road")
                .expectBody()
                .jsonPath("$.caution")
                .value(String.class, caution -> assertThat(caution).contains("not a certificate", "licensed"))
                .jsonPath("$.schemes[1].notChecked")
                .value(
                        List.class,
                        conditions -> assertThat((List<?>) conditions).hasSize(4));
    }

    @Test
    void standOnThePageOfAProposalWithTheCaution() {
        String id = made(PROPOSALS).replaceFirst(".*/", "");

        String page = studio.browser(Role.VIEWER).get("/proposals/" + id).body();

        assertThat(page)
                .contains("id=\"off-road\"", "missed by 2°", "not measurable", "2 of 5 are met; 4 are required")
                .contains("Advice from a side view, not a certificate");
    }
}
