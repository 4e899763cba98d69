package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.statistics.BandMethod;

/** What is drawn while a revision is typed: for whom, and that nothing of it is kept. */
@StudioTest
class RevisionPreviewTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Bands bands;

    @Autowired
    Proposals proposals;

    private ProposalView proposal;
    private String preview = "";

    @BeforeEach
    void makeAProposal() {
        String segment = Invented.key("preview");
        segments.create(segment, "Segment of a test", "");
        bands.set(
                segment,
                "wheelbase-in-wheels",
                BandSetting.of(new BandMethod.Rule(3, 4.5, "Of a test")),
                "Of a test",
                null,
                new Author(null, "Lead"));
        DimensionSet dimensions = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .build();
        proposal = proposals.make(new ProposalDraft("Tern", segment, dimensions, ""), studio.person(Role.DESIGNER));
        preview = "/proposals/" + proposal.id() + "/revise/preview";
    }

    private static Map<String, String> typed(String wheelbase) {
        return Map.of(
                "dimensions.wheelbase", wheelbase,
                "dimensions.frontTyreDiameter", "700",
                "dimensions.rearTyreDiameter", "700");
    }

    private HttpResponse<String> typing(Role role, String wheelbase) {
        return studio.browser(role).submit("/account", preview, typed(wheelbase));
    }

    @Test
    void judgesWhatIsTypedAndKeepsNothing() {
        HttpResponse<String> answer = typing(Role.DESIGNER, "3500");

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("One of 1 measures is outside its band")
                .contains("0.500 above the band (33\u00a0% of its width).")
                .doesNotContain("To the edge", "No single value", "<html", "??");
        ProposalView now = proposals.get(proposal.id(), studio.person(Role.DESIGNER));
        assertThat(now.version()).isEqualTo(proposal.version());
        assertThat(now.newest().number()).isEqualTo(1);
    }

    @Test
    void saysWhatCannotBeDrawnBesideTheLastDrawing() {
        HttpResponse<String> answer = typing(Role.DESIGNER, "280");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.headers().firstValue("HX-Retarget")).hasValue("#live-wrong");
        assertThat(answer.body())
                .contains("href=\"#dimensions-wheelbase\"")
                .contains("outside the plausible range 1000 to 6000 mm")
                .doesNotContain("<svg");
    }

    private String refused(Map<String, String> typed, String note) {
        Map<String, String> form = new HashMap<>(typed);
        form.put("note", note);
        form.put("version", Long.toString(proposal.version()));
        String page = "/proposals/" + proposal.id() + "/revise";
        HttpResponse<String> answer = studio.browser(Role.DESIGNER).submit(page, page, form);
        assertThat(answer.statusCode()).isEqualTo(422);
        return answer.body();
    }

    /** The note is what is refused, so everything that was typed can be drawn. */
    @Test
    void drawsWhatWasTypedAfterARefusedSave() {
        assertThat(refused(typed("3500"), "x".repeat(100_000)))
                .contains("As typed, not saved.", "L101 wheelbase 3500")
                .doesNotContain("L101 wheelbase 2800");
    }

    @Test
    void drawsARefusedValueAsItIsSavedAndTheOthersAsTyped() {
        Map<String, String> typed = Map.of(
                "dimensions.wheelbase", "280",
                "dimensions.frontTyreDiameter", "650",
                "dimensions.rearTyreDiameter", "650");

        assertThat(refused(typed, ""))
                .contains("As typed, not saved; where a value cannot be drawn, as saved.")
                .contains("L101 wheelbase 2800", "Front tyre diameter 650 mm");
    }

    @ParameterizedTest
    @CsvSource({"LEAD, 200", "TUTOR, 403", "VIEWER, 403", "LEARNER, 404"})
    void isForThoseAloneWhoMayReviseIt(Role role, int status) {
        assertThat(typing(role, "3500").statusCode()).isEqualTo(status);
        assertThat(typing(role, "280").statusCode()).isEqualTo(status == 200 ? 422 : status);
    }

    @Test
    void isNotDrawnForAFormOfAnotherSite() {
        assertThat(studio.browser(Role.DESIGNER).post(preview, typed("3500")).statusCode())
                .isEqualTo(403);
    }
}
