package studio.stancebook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Scale;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.Proposals;

/** The page on which packages and proposals are compared. */
@StudioTest
class ComparePageTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Proposals proposals;

    private String segment = "";
    private StudioBrowser viewer;

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("compared");
        segments.create(segment, "Segment of comparisons", "");
        viewer = studio.browser(Role.VIEWER);
    }

    private String benchmark(String name, double wheelbase) {
        return "package-"
                + catalogue
                        .add(Invented.draft(segment, name, wheelbase), new Author(null, "Designer"))
                        .id();
    }

    private String benchmark(String name, DimensionSet dimensions) {
        PackageDraft draft = new PackageDraft(name, segment, null, Origin.SPECIFICATION, dimensions);
        return "package-" + catalogue.add(draft, new Author(null, "Designer")).id();
    }

    private String proposal(Role role, double wheelbase) {
        ProposalDraft draft = new ProposalDraft(
                "Tern", segment, Invented.dimensions(wheelbase).build(), "First sketch");
        return "proposal-" + proposals.make(draft, studio.person(role)).id();
    }

    private String page(String address) {
        return viewer.get(address).body();
    }

    @Test
    void layPackagesAndProposalsOverEachOtherAndTellTheDifferences() {
        String alder = benchmark("Alder & Co", 2800);
        String beech = benchmark("Beech", 2870);
        String tern = proposal(Role.DESIGNER, 2940);

        String page = page("/compare?of=" + alder + "&of=" + beech + "&of=" + tern + "&at=rear-wheel");

        assertThat(page)
                .contains("1 Alder &amp; Co (2020)", "2 Beech (2020)", "3 Tern, r1")
                .contains("class=\"line-a\"", "class=\"line-b\"", "class=\"line-c\"")
                .contains("Differences from Alder &amp; Co (2020)", "+70", "+140", "+0.20")
                .contains("value=\"rear-wheel\" selected")
                .contains("/compare/drawing.svg?of=" + alder + "&amp;of=" + beech)
                .doesNotContain("??");
        // Behind the front wheel of the first by as much as it is longer, mm.
        assertThat(page).contains("cx=\"-70\"", "cx=\"-140\"").doesNotContain("cx=\"2870\"");
    }

    @Test
    void giveEachAColumnOfItsOwn() {
        String alder = benchmark("Alder", 2800);
        String beech = benchmark("Beech", 2870);
        String tern = proposal(Role.DESIGNER, 2940);

        String table = page("/compare?of=" + alder + "&of=" + beech + "&of=" + tern);

        assertThat(table.substring(table.indexOf("<table"), table.indexOf("</thead>")))
                .containsSubsequence(">Alder (2020)</a>", ">Beech (2020)</a>", ">Tern, r1</a>");
        // 2800, 2870 and 2940 mm on tyres of 700 mm.
        assertThat(table.substring(table.indexOf("</thead>"), table.indexOf("</table>")))
                .containsSubsequence("4.00", "4.10", "+0.10", "+70", "4.20", "+0.20", "+140");
    }

    @Test
    void drawFeaturesInAFineLineOfTheSameColour() {
        DimensionSet full = Invented.dimensions(2800)
                .set(Landmark.COWL, 400, 1000)
                .set(Landmark.SCREEN_TOP, 1000, 1450)
                .set(Landmark.ROCKER_FRONT, 420, 300)
                .set(Landmark.ROCKER_REAR, 2350, 310)
                .set(Landmark.ARCH_FRONT_TOP, 0, 780)
                .set(Landmark.ARCH_REAR_TOP, 2800, 790)
                .set(Landmark.BELT_FRONT, 500, 1010)
                .set(Landmark.BELT_REAR, 2900, 1040)
                .build();
        String pair = "of=" + benchmark("Alder", 2800) + "&of=" + benchmark("Full", full);

        // Two arches, a rocker and a belt line at least.
        assertThat(page("/compare?" + pair).split("class=\"line-b fine\"", -1)).hasSizeGreaterThan(4);
        assertThat(page("/compare/drawing.svg?" + pair)).contains("class=\"line-b fine\" stroke=\"#1f5fa8\"");
    }

    @Test
    void offerTheSameSegmentFirst() {
        String mark = Invented.key("first");
        String own = benchmark(mark + " own", 2800);
        String other = segment;
        segment = Invented.key("compared-first");
        segments.create(segment, "A segment that comes first", "");
        String elsewhere = benchmark(mark + " abroad", 2800);
        segment = other;
        String picked = benchmark("Alder", 2800);

        assertThat(page("/compare?of=" + picked + "&q=" + mark))
                .containsSubsequence("value=\"" + own + "\"", "value=\"" + elsewhere + "\"");
    }

    @Test
    void holdAgainstAnotherThatIsChosen() {
        String alder = benchmark("Alder", 2800);
        String beech = benchmark("Beech", 2870);

        assertThat(page("/compare?of=" + alder + "&of=" + beech + "&reference=" + beech))
                .contains("Differences from Beech (2020)", "1 Beech (2020)", "\u221270");
    }

    @Test
    void sayWhatToDoWithNothingPickedAndWithOne() {
        String alder = benchmark("Alder", 2800);

        assertThat(page("/compare")).contains("Nothing is compared yet.").doesNotContain("??");
        assertThat(page("/compare?of=" + alder))
                .contains("Pick one to five more to compare with Alder (2020).")
                .doesNotContain("id=\"differences\"", "??");
    }

    @Test
    void refuseSevenAndKeepThemToTakeSomeAway() {
        String seven = IntStream.range(0, 7)
                .mapToObj(i -> "of=" + benchmark("Seventh " + i, 2800 + 10 * i))
                .collect(Collectors.joining("&"));

        assertThat(viewer.get("/compare?" + seven).statusCode()).isEqualTo(400);
        assertThat(page("/compare?" + seven))
                .contains("From 2 to 6 are compared, not 7.", "Seventh 0", "Seventh 6")
                .doesNotContain("id=\"differences\"");
        assertThat(viewer.get("/compare/drawing.svg?" + seven).statusCode()).isEqualTo(400);
    }

    @Test
    void refuseWhatIsNoPickPointOrScaleAndSayWhatIs() {
        String alder = benchmark("Alder", 2800);

        assertThat(viewer.get("/compare?of=car-1").statusCode()).isEqualTo(400);
        assertThat(page("/compare?of=car-1")).contains("package-12, proposal-3", "car-1");
        assertThat(page("/compare?of=" + alder + "&at=roof")).contains("cowl or h-point", "roof");
        assertThat(page("/compare?of=" + alder + "&scale=miles")).contains("in mm or in wheels", "miles");
        assertThat(viewer.get("/compare?of=package-999999999").statusCode()).isEqualTo(404);
    }

    @Test
    void nameWhatHasNotThePointThatTheyAreToBeLaidOverAt() {
        String with = benchmark(
                "With cowl",
                Invented.dimensions(2800).set(Landmark.COWL, 400, 1000).build());
        String without = benchmark("Without cowl", 2900);

        assertThat(page("/compare?of=" + with + "&of=" + without + "&at=cowl"))
                .contains("No cowl is recorded for Without cowl (2020): aligned at the front wheel instead.");
    }

    @Test
    void drawASketchWithoutDimensionToTheTyreOfTheOthers() {
        String alder = benchmark("Alder", 2800);
        String sketch = benchmark(
                "Sketch",
                DimensionSet.builder()
                        .scale(Scale.UNSCALED)
                        .set(Dimension.WHEELBASE, 420)
                        .set(Dimension.FRONT_TYRE_DIAMETER, 100)
                        .set(Dimension.REAR_TYRE_DIAMETER, 100)
                        .build());

        assertThat(page("/compare?of=" + alder + "&of=" + sketch))
                .contains("Sketch has no lengths")
                .contains("cx=\"2940\"");
    }

    @Test
    void takeTheDrawingOutAsSvg() {
        String pair = "of=" + benchmark("Alder <1>", 2800) + "&of=" + benchmark("Beech", 2870);

        assertThat(viewer.get("/compare/drawing.svg?" + pair).headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("image/svg+xml"));
        assertThat(viewer.get("/compare/drawing.svg?" + pair).headers().firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"compare-alder-1-2020-beech-2020.svg\"");
        assertThat(page("/compare/drawing.svg?" + pair))
                .startsWith("<?xml")
                .contains("Alder &lt;1&gt;", "cx=\"2870\"", "stroke=\"#1f5fa8\"");
    }

    @Test
    void areReachedFromTheCatalogueAPackageAndAProposal() {
        String alder = benchmark("Alder", 2800);
        String tern = proposal(Role.DESIGNER, 2940);

        assertThat(page("/catalogue?segment=" + segment))
                .contains("action=\"/compare\"", "name=\"of\"", "value=\"" + alder + "\"");
        assertThat(page("/packages/" + alder.substring("package-".length()))).contains("/compare?of=" + alder);
        assertThat(page("/proposals/" + tern.substring("proposal-".length()))).contains("/compare?of=" + tern);
        assertThat(page("/compare?q=Tern")).contains("value=\"" + tern + "\"");
    }

    @Test
    void hideFromALearnerWhatOthersPropose() {
        String tern = proposal(Role.DESIGNER, 2940);
        StudioBrowser learner = studio.browser(Role.LEARNER);

        assertThat(learner.get("/compare?of=" + tern).statusCode()).isEqualTo(404);
        assertThat(learner.get("/compare/drawing.svg?of=" + tern + "&of=" + benchmark("Alder", 2800))
                        .statusCode())
                .isEqualTo(404);
        assertThat(learner.get("/compare?q=Tern").body()).doesNotContain("value=\"" + tern + "\"");
    }
}
