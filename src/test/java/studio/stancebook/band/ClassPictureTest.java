package studio.stancebook.band;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.statistics.BandMethod;

/** The picture of a class on the page of its segment. */
@StudioTest
class ClassPictureTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Bands bands;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("class-picture");
        segments.create(segment, "Segment of a test", "");
    }

    private static DimensionSetBuilder drawable(double wheelbase) {
        return Invented.dimensions(wheelbase)
                .set(Dimension.FRONT_OVERHANG, 800)
                .set(Dimension.REAR_OVERHANG, 900)
                .set(Landmark.COWL, 420, 1000)
                .set(Landmark.SCREEN_TOP, 1000, 1450);
    }

    private long add(String name, DimensionSetBuilder dimensions) {
        return catalogue
                .add(
                        new PackageDraft(name, segment, 2020, Origin.SPECIFICATION, dimensions.build()),
                        new Author(null, "Tests"))
                .id();
    }

    private String page() {
        return studio.browser(Role.VIEWER).get("/segments/" + segment).body();
    }

    private static long count(String text, String part) {
        return Pattern.compile(Pattern.quote(part)).matcher(text).results().count();
    }

    @Test
    void saysThatAnEmptyClassHasNothingToDraw() {
        assertThat(page()).contains("there is nothing to draw").doesNotContain("class-picture__one");
    }

    @Test
    void saysWhatIsMissingWhereNothingCanBeDrawn() {
        add("Bare", Invented.dimensions(2700));

        assertThat(page()).contains("None of its packages can be drawn yet").doesNotContain("class-picture__one");
    }

    @Test
    void namesEachLineAndEscapesItsName() {
        long id = add("Ash <b>", drawable(2700));
        add("Birch", drawable(2800));
        add("Bare", Invented.dimensions(2700));

        assertThat(page())
                .contains("2 of 3 packages drawn", "Not drawn, because tyres or points are missing: Bare (2020)")
                .contains("id=\"silhouette-" + id + "\"", "aria-label=\"Ash &lt;b&gt; (2020)\"")
                .contains("aria-label=\"Birch (2020)\"", "href=\"/packages/" + id + "\"")
                .doesNotContain("Ash <b>");
    }

    @Test
    void saysThatOnePackageIsTheWholeClass() {
        add("Ash", drawable(2700));

        assertThat(page()).contains("One package is the whole class");
    }

    @Test
    void showsABandAsSoonAsItIsSetAndNoLongerOnceItIsWithdrawn() {
        add("Ash", drawable(2700));
        assertThat(page()).doesNotContain("zone-edge");

        bands.set(
                segment,
                "height-in-wheels",
                BandSetting.of(new BandMethod.Rule(2.0, 2.25, "As drawn")),
                "As drawn",
                null,
                new Author(null, "Tests"));
        assertThat(page()).contains("zone-edge", ">height</text>");

        bands.withdraw(segment, "height-in-wheels", "Tried", new ExpectedVersion(1), new Author(null, "Tests"));
        assertThat(page()).doesNotContain("zone-edge");
    }

    @Test
    void leavesOutAPackageAsSoonAsItIsDeleted() {
        add("Ash", drawable(2700));
        long second = add("Birch", drawable(2800));
        assertThat(count(page(), "class-picture__one")).isEqualTo(2);

        catalogue.delete(second, new ExpectedVersion(0));

        assertThat(count(page(), "class-picture__one")).isEqualTo(1);
    }

    /** 401 packages: every third one, which is 134. */
    @Test
    void drawsALargeClassInPartAndSaysHow() {
        for (int i = 0; i < 401; i++) {
            add("Many " + i, drawable(2600 + i));
        }

        String page = page();

        assertThat(count(page, "class-picture__one")).isEqualTo(134);
        assertThat(page).contains("134 of 401 packages drawn", "one package in 3, in the order of recording");
    }
}
