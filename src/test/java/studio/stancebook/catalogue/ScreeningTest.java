package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.access.Author;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Impossible;
import studio.stancebook.tyre.TyreDesignation;

/** Queries that a write raises by itself. Cut-off 3.5: B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers. */
abstract class ScreeningTest {

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("screening");
        segments.create(segment, "Segment of a test", "");
        catalogue.addAll(
                List.of(draft("A", 2700), draft("B", 2710), draft("C", 2720), draft("D", 2730), draft("E", 2740)),
                new Author(null, "Lead"));
    }

    private PackageDraft draft(String name, double wheelbase) {
        return Invented.draft(segment, name, wheelbase);
    }

    /** Among the six: median 2725, median deviation 15, so z = 0.6745 x 375 / 15 = 16.9. */
    @Test
    void asksAboutADimensionFarFromItsClassAndNotAgainAboutTheMeasuresThatFollowFromIt() {
        PackageView added = catalogue.add(draft("Typing error", 3100), new Author(null, "Designer"));

        assertThat(added.openQueries()).singleElement().satisfies(query -> {
            assertThat(query.cause()).isEqualTo(IssueCause.FAR_FROM_CLASS);
            assertThat(query.valueKey()).isEqualTo("wheelbase");
            assertThat(query.question()).contains("3100 mm").contains("2725 mm").contains("+16.9");
        });
    }

    /** Among the six: median 2725, median deviation 20, so z = 0.6745 x 75 / 20 = 2.5. */
    @Test
    void asksNothingAboutAValueWithinReachOfItsClass() {
        PackageView added = catalogue.add(draft("Longer", 2800), new Author(null, "Designer"));

        assertThat(added.queries()).isEmpty();
    }

    @Test
    void asksAboutAMeasureWhenNoDimensionAloneIsFar() {
        PackageView added = catalogue.add(
                new PackageDraft(
                        "Small wheels",
                        segment,
                        2020,
                        Origin.SPECIFICATION,
                        Invented.dimensions(2725)
                                .set(Dimension.FRONT_TYRE_DIAMETER, 690)
                                .set(Dimension.REAR_TYRE_DIAMETER, 712)
                                .set(Dimension.OVERALL_HEIGHT, 1500)
                                .build()),
                new Author(null, "Designer"));

        assertThat(added.openQueries())
                .extracting(PackageIssue::valueKey)
                .contains("frontTyreDiameter", "rearTyreDiameter")
                .doesNotContain("wheelbase", "height-in-wheels", "tyre-stagger");
    }

    private PackageView onTyres(String size) {
        DimensionSet set = Invented.dimensions(2725)
                .without("frontTyreDiameter")
                .without("rearTyreDiameter")
                .tyres(TyreDesignation.parse(size))
                .build();
        return catalogue.add(
                new PackageDraft("On " + size, segment, 2020, Origin.SPECIFICATION, set), new Author(null, "Designer"));
    }

    /** Common sizes: common practice, no source. The others have one size, so that any other is far from them. */
    @ParameterizedTest
    @ValueSource(strings = {"245/75R16", "LT245/75R16", "205/55R16"})
    void asksNothingAboutACommonTyreSizeThatTheOthersDoNotHave(String size) {
        assertThat(onTyres(size).openQueries()).isEmpty();
    }

    @Test
    void asksAboutATyreSizeThatIsNotCommon() {
        assertThat(onTyres("345/75R16").openQueries())
                .extracting(PackageIssue::valueKey)
                .contains("frontTyreDiameter");
    }

    @Test
    void settlesTheQueriesOfAValueThatIsSetAside() {
        PackageView added = catalogue.add(draft("Typing error", 3100), new Author(null, "Designer"));

        PackageView aside = catalogue.setAsideFor(
                added.id(),
                added.openQueries().get(0).id(),
                new ExpectedVersion(added.version()),
                "Not the wheelbase",
                new Author(null, "Lead"));

        assertThat(aside.openQueries()).isEmpty();
        assertThat(aside.valuesSetAside()).containsOnlyKeys("wheelbase");
        assertThat(aside.queries().get(0).settlement().answer()).isEqualTo("Set aside: Not the wheelbase");
        assertThat(aside.queries().get(0).settlement().by()).isEqualTo("Lead");
    }

    @Test
    void settlesTheQueriesOfAMeasureWhenADimensionOfItIsSetAside() {
        PackageView added = catalogue.add(
                new PackageDraft(
                        "High",
                        segment,
                        2020,
                        Origin.SPECIFICATION,
                        Invented.dimensions(2725)
                                .set(Dimension.OVERALL_HEIGHT, 1500)
                                .build()),
                new Author(null, "Designer"));
        List<String> before =
                added.openQueries().stream().map(PackageIssue::valueKey).toList();

        PackageView aside = catalogue.setValueAside(
                added.id(),
                new ExpectedVersion(added.version()),
                "overallHeight",
                "With the rack",
                new Author(null, "Lead"));

        assertThat(aside.openQueries())
                .as("of " + before)
                .extracting(PackageIssue::valueKey)
                .doesNotContain("overallHeight", "height-in-wheels");
    }

    @Test
    void settlesAllQueriesOfAPackageThatIsSetAside() {
        PackageView added = catalogue.add(draft("A again", 2700), new Author(null, "Designer"));

        PackageView aside = catalogue.setAside(
                added.id(), new ExpectedVersion(added.version()), "The same vehicle", new Author(null, "Lead"));

        assertThat(added.openQueries()).hasSize(1);
        assertThat(aside.openQueries()).isEmpty();
    }

    @Test
    void settlesNothingWithoutANote() {
        PackageView added = catalogue.add(draft("Typing error", 3100), new Author(null, "Designer"));
        long query = added.openQueries().get(0).id();

        assertThatThrownBy(() -> catalogue.settle(added.id(), query, "  ", new Author(null, "Lead")))
                .isInstanceOf(Impossible.class)
                .hasMessageContaining("Say what was found");
        assertThat(catalogue.get(added.id()).openQueries()).hasSize(1);
    }

    @Test
    void withdrawsTheQueryWhenTheValueIsPutRight() {
        PackageView added = catalogue.add(draft("Typing error", 3100), new Author(null, "Designer"));

        PackageView changed = catalogue.change(
                added.id(), new ExpectedVersion(0), draft("Typing error", 2710), new Author(null, "Designer"));

        assertThat(changed.queries()).extracting(PackageIssue::cause).containsExactly(IssueCause.SAME_DIMENSIONS);
    }

    @Test
    void keepsTheAnswerOfAPersonWhenThePackageChangesOtherwise() {
        PackageView added = catalogue.add(draft("Long one", 3100), new Author(null, "Designer"));
        long query = added.openQueries().get(0).id();

        PackageView settled = catalogue.settle(added.id(), query, "Checked on the vehicle", new Author(null, "Lead"));
        PackageView renamed = catalogue.change(
                added.id(), new ExpectedVersion(0), draft("Long one, really", 3100), new Author(null, "Designer"));

        assertThat(settled.openQueries()).isEmpty();
        assertThat(renamed.openQueries()).isEmpty();
        assertThat(renamed.queries().get(0).settlement()).isNotNull();
        assertThat(catalogue.reopen(added.id(), query).openQueries()).hasSize(1);
    }

    @Test
    void asksAboutTheSameDimensionsUnderAnotherName() {
        PackageView added = catalogue.add(draft("A again", 2700), new Author(null, "Designer"));

        assertThat(added.openQueries()).singleElement().satisfies(query -> {
            assertThat(query.cause()).isEqualTo(IssueCause.SAME_DIMENSIONS);
            assertThat(query.question()).contains("A (2020)");
        });
    }

    @Test
    void dropsNothingByItself() {
        PackageView added = catalogue.add(draft("Typing error", 3100), new Author(null, "Designer"));

        assertThat(added.setAside()).isNull();
        assertThat(added.valuesSetAside()).isEmpty();
        assertThat(snapshots.of(segment).packages()).isEqualTo(6);
    }

    @Autowired
    ClassSnapshots snapshots;
}
