package studio.stancebook.underlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.PdfChecker;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.statistics.BandMethod;

/** The page and the calls of underlays, used as without script. */
@StudioTest
class UnderlayPagesTest {

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

    private String segment = "";

    /** Wheelbases of 3, 4 and 5 wheels: a median of 4, which the band of 3 to 3.5 cuts off at 3.5. */
    @BeforeEach
    void makeASegmentWithABand() {
        segment = Invented.key("underlay");
        segments.create(segment, "Segment to draw over", "");
        BandSetting rule = BandSetting.of(new BandMethod.Rule(3, 3.5, "Of a test"));
        bands.set(segment, "wheelbase-in-wheels", rule, "Of a test", null, new Author(null, "Lead"));
        for (int wheels = 3; wheels <= 5; wheels++) {
            catalogue.add(Invented.draft(segment, Invented.name("Benchmark"), 700 * wheels), new Author(null, "Tests"));
        }
    }

    private ProposalView proposal(Role role) {
        DimensionSet dimensions = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .set(Dimension.FRONT_OVERHANG, 805)
                .build();
        return proposals.make(new ProposalDraft("Tern", segment, dimensions, "First"), studio.person(role));
    }

    @Test
    void isReachedFromASegmentAndAsksForASize() {
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        assertThat(viewer.get("/segments/" + segment).body()).contains("/underlay?segment=" + segment);
        HttpResponse<String> page = viewer.get("/underlay?segment=" + segment);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("No sheet is drawn yet.").doesNotContain("??", "<img");
    }

    @Test
    void drawsFromALinkWithASizeAlone() {
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        HttpResponse<String> page = viewer.get("/underlay?segment=" + segment + "&wheelbase=2800");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).doesNotContain("No sheet is drawn yet.");
    }

    /** 265/70R17: 432 + 2 x 186 = 804 mm by UN R30; 3.5 x 804 = 2814 mm. */
    @Test
    void drawsASegmentFromATyreSizeWithItsFiguresAndFiles() {
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        HttpResponse<String> page = viewer.get(
                "/underlay?segment=" + segment + "&tyre=265%2F70R17&paper=a3&scale=20&title=Dunlin%20%26%20co");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("Dunlin &amp; co at 1:20", "3.50", "2814", "median of the class", "/underlay.pdf?")
                .contains("A proportion study, not a measurement of a vehicle")
                .doesNotContain("??");
        String query = "?segment=" + segment + "&tyre=265/70R17&scale=20";
        for (String kind : new String[] {"svg", "pdf", "png"}) {
            HttpResponse<String> file = viewer.get("/underlay." + kind + query);
            assertThat(file.statusCode()).isEqualTo(200);
            assertThat(file.headers().firstValue("Content-Type").orElse("")).contains(kind);
            assertThat(file.headers().firstValue("Content-Disposition").orElse(""))
                    .startsWith("attachment; filename=")
                    .endsWith("-underlay-1-to-20." + kind + "\"");
        }
    }

    @Test
    void laysTheOutlineOfAProposalOverAsALayerAtItsOwnSizeOnly() throws Exception {
        DimensionSet drawn = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .set(Landmark.COWL, 420, 1000)
                .set(Landmark.SCREEN_TOP, 1000, 1450)
                .build();
        long id = proposals
                .make(new ProposalDraft("Tern", segment, drawn, "First"), studio.person(Role.DESIGNER))
                .id();
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        String sheet = "?proposal=" + id + "&paper=a3";

        assertThat(designer.get("/underlay.svg" + sheet).body()).doesNotContain("class=\"outline\"");
        assertThat(designer.get("/underlay.svg" + sheet + "&outline=true").body())
                .contains("class=\"outline\"");
        assertThat(layers(sheet)).isEmpty();
        assertThat(layers(sheet + "&outline=true")).containsExactly("Outline");
        HttpResponse<String> other = designer.get("/underlay" + sheet + "&outline=true&wheelbase=3200");
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(other.body()).contains("The outline is that of a proposal at its own size");
    }

    /** The optional content of ISO 32000-1, 8.11, as a reader of PDF finds it; also held to ISO 14289-1. */
    private List<String> layers(String sheet) throws Exception {
        byte[] file = studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1/underlays.pdf" + sheet)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .returnResult()
                .getResponseBody();
        assertThat(PdfChecker.faults(file)).isEmpty();
        try (PDDocument document = Loader.loadPDF(file)) {
            var layers = document.getDocumentCatalog().getOCProperties();
            return layers == null ? List.of() : List.of(layers.getGroupNames());
        }
    }

    @Test
    void drawsAProposalAtItsOwnSizeAndAtAnother() {
        ProposalView tern = proposal(Role.DESIGNER);
        StudioBrowser designer = studio.browser(Role.DESIGNER);

        assertThat(designer.get("/proposals/" + tern.id()).body()).contains("/underlay?proposal=" + tern.id());
        assertThat(designer.get("/underlay?proposal=" + tern.id()).body())
                .contains("Tern, revision 1 at 1:", "4.00", "2800", "the proposal");
        studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1/underlays?proposal={id}&wheelbase=3200", tern.id())
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.tyreDiameterMm")
                .isEqualTo(800)
                .jsonPath("$.proportions[?(@.measure=='front-overhang-in-wheels')].placeMm")
                .isEqualTo(-920.0);
        assertThat(studio.browser(Role.LEARNER)
                        .get("/underlay?proposal=" + tern.id())
                        .statusCode())
                .isEqualTo(404);
    }

    /** A quarter of the way from 3 to 3.5 wheels of 800 mm: 2500 mm. */
    @Test
    void drawsAnyPointOfABand() {
        studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/underlays?segment={segment}&tyre=275/70R16&at.wheelbase-in-wheels=25", segment)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.proportions[0].value")
                .isEqualTo(3.125)
                .jsonPath("$.proportions[0].basis")
                .isEqualTo("point")
                .jsonPath("$.proportions[0].bandVersion")
                .isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "'&scale=20', tyre",
        "'&tyre=wheel&scale=20', tyre",
        "'&wheelbase=28&scale=20', wheelbase",
        "'&wheelbase=2800&scale=7', scale",
        "'&wheelbase=2800&scale=5&paper=a4', scale",
        "'&wheelbase=2800&paper=b4', paper",
        "'&wheelbase=2800&at.wheelbase-in-wheels=101', at.wheelbase-in-wheels",
        "'&wheelbase=2800&at.colour=50', at.colour",
        "'&wheelbase=2800&proposal=1', proposal",
        "'&wheelbase=2800&proposal=x', proposal"
    })
    void namesTheFieldThatCannotBe(String query, String field) {
        studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/underlays.pdf?segment=" + segment + query)
                .exchange()
                .expectStatus()
                .is4xxClientError()
                .expectBody()
                .jsonPath("$.errors[?(@.field=='" + field + "')].message")
                .isNotEmpty();
    }

    @Test
    void saysOnThePageWhatFitsAndKeepsWhatWasTyped() {
        HttpResponse<String> page = studio.browser(Role.VIEWER)
                .get("/underlay?segment=" + segment + "&wheelbase=2800&paper=a4&scale=5&title=Kept");

        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body())
                .contains("fits A4", "value=\"Kept\"", "value=\"2800\"")
                .doesNotContain("<img");
    }
}
