package studio.stancebook.proposal.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.PdfWords;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.strip.StripReading;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.ShownRevision;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.QuantileType;

/** What a revision was judged by stays beside it, whatever becomes of bands and benchmarks. */
abstract class JudgedAsThenTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Bands bands;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Proposals proposals;

    @Autowired
    ProposalPictures pictures;

    private String segment = "";
    private SignedIn designer;
    private PackageView benchmark;
    private ProposalView proposal;

    @BeforeEach
    void judgeAProposal() {
        segment = Invented.key("as-then");
        segments.create(segment, "Segment of a test", "");
        designer = studio.person(Role.DESIGNER);
        for (int i = 0; i < 40; i++) {
            benchmark = catalogue.add(
                    Invented.draft(segment, Invented.name("Benchmark"), 2600 + 10 * i), new Author(null, "Tests"));
        }
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Percentile(0.1, 0.9, QuantileType.TYPE_7)),
                "",
                null,
                new Author(null, "Lead"));
        proposal = proposals.make(
                new ProposalDraft("Tern", segment, Invented.dimensions(2800).build(), "First"), designer);
    }

    private AssessmentView shown() {
        ShownRevision shown = proposals.shown(proposals.state(proposal.id(), 1, designer), 10);
        return pictures.assessment(shown);
    }

    private static StripReading reading(AssessmentView view) {
        return view.all().stream()
                .map(BandStrip::reading)
                .filter(reading -> reading.measure().equals(MEASURE))
                .findFirst()
                .orElseThrow();
    }

    private AssessmentView onSheet() {
        return pictures.assessment(proposals.revision(proposal.id(), 1, designer), List.of());
    }

    private List<PdfWords.Line> sheet() {
        return PdfWords.of(studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1/proposals/" + proposal.id() + "/sheet.pdf?revision=1")
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .returnResult()
                .getResponseBodyContent());
    }

    private String page() {
        return studio.browser(Role.DESIGNER)
                .get("/proposals/" + proposal.id() + "?revision=1")
                .body();
    }

    private void replaceBand() {
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Rule(3.9, 4.2, "Of a test")),
                "Of a test",
                new ExpectedVersion(1),
                new Author(null, "Lead"));
    }

    @Test
    void keepsTheUncertainEdgesOfTheBandVersionThatWasApplied() {
        StripReading before = reading(shown());
        assertThat(before.lowerEdge()).as("the band has uncertain edges").isNotNull();

        replaceBand();
        assertThat(reading(shown())).isEqualTo(before);

        bands.withdraw(segment, MEASURE, "Of a test", new ExpectedVersion(2), new Author(null, "Lead"));
        assertThat(reading(shown())).isEqualTo(before);
    }

    @Test
    void showsNoBenchmarkThatCameLaterAndEachThatWasSetAsideSince() {
        AssessmentView before = shown();
        AssessmentView onSheet = onSheet();
        List<PdfWords.Line> sheet = sheet();
        String later = Invented.name("Later");

        catalogue.addAll(List.of(Invented.draft(segment, later, 2666)), new Author(null, "Tests"));
        catalogue.setAside(
                benchmark.id(), new ExpectedVersion(benchmark.version()), "Not ours", new Author(null, "Tests"));
        replaceBand();
        proposals.revise(
                proposal.id(),
                new ExpectedVersion(proposal.version()),
                Invented.dimensions(2900).build(),
                "Second",
                designer);

        assertThat(shown()).isEqualTo(before);
        assertThat(before.missing()).isZero();
        assertThat(onSheet()).isEqualTo(onSheet);
        assertThat(sheet()).isEqualTo(sheet);
        assertThat(page()).doesNotContain(later).doesNotContain("leave out packages");
        assertThat(studio.browser(Role.DESIGNER)
                        .get("/proposals/" + proposal.id())
                        .body())
                .contains(later);
    }

    @Test
    void saysHowManyPackagesAreNotKeptAsTheyWere() {
        catalogue.change(
                benchmark.id(),
                new ExpectedVersion(benchmark.version()),
                Invented.draft(segment, benchmark.name(), 2777),
                new Author(null, "Tests"));
        PackageView gone =
                catalogue.add(Invented.draft(segment, Invented.name("Gone"), 2500), new Author(null, "Tests"));
        proposals.revise(
                proposal.id(),
                new ExpectedVersion(proposal.version()),
                Invented.dimensions(2900).build(),
                "Second",
                designer);
        catalogue.delete(gone.id(), new ExpectedVersion(gone.version()));

        assertThat(reading(shown()).ticks()).hasSize(39);
        assertThat(page()).contains("changed, moved or deleted since (up to 2)");
        assertThat(pictures.assessment(proposals.shown(proposals.state(proposal.id(), 2, designer), 10))
                        .missing())
                .isEqualTo(1);
    }
}
