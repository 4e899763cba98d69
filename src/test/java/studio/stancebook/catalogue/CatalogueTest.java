package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import studio.stancebook.access.Author;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Stale;

/** Recording, changing, setting aside and finding packages. */
abstract class CatalogueTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    ClassSnapshots snapshots;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("catalogue");
        segments.create(segment, "Segment of a test", "");
    }

    private PackageView add(String name, double wheelbase) {
        return catalogue.add(Invented.draft(segment, name, wheelbase), new Author(null, "Designer of the tests"));
    }

    private double[] column() {
        return snapshots.of(segment).column(MEASURE).toArray();
    }

    @Test
    void keepsWhatWasRecordedAndWhoRecordedIt() {
        PackageView added = add("Invented one", 2800);

        PackageView read = catalogue.get(added.id());

        assertThat(read).isEqualTo(added);
        assertThat(read.dimensions().scalar(Dimension.WHEELBASE)).hasValue(2800);
        assertThat(read.dimensions().recorded().get("wheelbase").by()).isEqualTo("Designer of the tests");
        assertThat(read.version()).isZero();
    }

    @Test
    void marksOnlyTheValuesThatAChangeTouches() {
        PackageView added = add("Invented one", 2800);
        PackageDraft longer = new PackageDraft(
                "Invented one",
                segment,
                2020,
                Origin.SPECIFICATION,
                Invented.dimensions(2810).build());

        PackageView changed =
                catalogue.change(added.id(), new ExpectedVersion(0), longer, new Author(null, "Somebody else"));

        assertThat(changed.version()).isEqualTo(1);
        assertThat(changed.dimensions().recorded().get("wheelbase").by()).isEqualTo("Somebody else");
        assertThat(changed.dimensions().recorded().get("overallHeight").by()).isEqualTo("Designer of the tests");
    }

    @Test
    void countsAPackageInItsClassUntilItIsSetAsideMovedOrDeleted() {
        add("Invented one", 2800);
        PackageView second = add("Invented two", 2870);
        assertThat(column()).containsExactly(4.0, 4.1);

        PackageView aside =
                catalogue.setAside(second.id(), "Measured with a load", new Author(null, "Lead of the tests"));
        assertThat(column()).containsExactly(4.0);
        assertThat(aside.setAside()).isNotNull();

        PackageView back = catalogue.takeBack(
                second.id(), new ExpectedVersion(aside.version()), new Author(null, "Lead of the tests"));
        assertThat(column()).containsExactly(4.0, 4.1);
        assertThat(back.setAside()).isNull();

        String other = Invented.key("other");
        segments.create(other, "Another segment", "");
        PackageView moved = catalogue.change(
                second.id(),
                new ExpectedVersion(back.version()),
                Invented.draft(other, "Invented two", 2870),
                new Author(null, "Lead of the tests"));
        assertThat(column()).containsExactly(4.0);
        assertThat(snapshots.of(other).column(MEASURE).toArray()).containsExactly(4.1);

        catalogue.delete(moved.id(), new ExpectedVersion(moved.version()));
        assertThat(snapshots.of(other).packages()).isZero();
        assertThatThrownBy(() -> catalogue.get(moved.id())).isInstanceOf(UnknownPackage.class);
    }

    @Test
    void leavesAValueSetAsideOutOfTheClassButInThePackage() {
        PackageView added = add("Invented one", 2800);

        PackageView without =
                catalogue.setValueAside(added.id(), "overallHeight", "Roof rack counted", new Author(null, "Lead"));

        ClassSnapshot now = snapshots.of(segment);
        assertThat(now.column("height-in-wheels").isEmpty()).isTrue();
        assertThat(now.column(MEASURE).toArray()).containsExactly(4.0);
        assertThat(without.dimensions().scalar(Dimension.OVERALL_HEIGHT)).hasValue(1500);

        PackageView wheelbase = catalogue.setValueAside(
                added.id(), new ExpectedVersion(without.version()), "wheelbase", "?", new Author(null, "Lead"));
        assertThat(column()).isEmpty();
        PackageView back = catalogue.takeValueBack(
                added.id(), new ExpectedVersion(wheelbase.version()), "wheelbase", new Author(null, "Lead"));
        assertThat(column()).containsExactly(4.0);
        assertThat(back.valuesSetAside()).containsOnlyKeys("overallHeight");
    }

    @Test
    void refusesTheSameNameAndYearInOneSegmentWithAndWithoutAYear() {
        add("Invented one", 2800);
        assertThatThrownBy(() -> add("Invented one", 2801)).isInstanceOf(DuplicatePackage.class);

        PackageDraft yearless = new PackageDraft(
                "Invented one",
                segment,
                null,
                Origin.DRAWING,
                Invented.dimensions(2800).build());
        catalogue.addAll(List.of(yearless), new Author(null, "Lead"));

        assertThatThrownBy(() -> catalogue.addAll(List.of(yearless), new Author(null, "Lead")))
                .isInstanceOf(DuplicatePackage.class);
        assertThat(catalogue.exists(new PackageName("Invented one", segment, null)))
                .isTrue();
        assertThat(catalogue.exists(new PackageName("Invented one", segment, 2021)))
                .isFalse();
    }

    @Test
    void refusesAStaleChange() {
        PackageView added = add("Invented one", 2800);
        PackageDraft draft = Invented.draft(segment, "Invented one", 2810);
        catalogue.change(added.id(), new ExpectedVersion(0), draft, new Author(null, "First"));

        assertThatThrownBy(
                        () -> catalogue.change(added.id(), new ExpectedVersion(0), draft, new Author(null, "Second")))
                .isInstanceOf(Stale.class);
        assertThatThrownBy(() -> catalogue.delete(added.id(), new ExpectedVersion(0)))
                .isInstanceOf(Stale.class);
    }

    @Test
    void refusesByHandWhatItQueriesWhenBroughtIn() {
        PackageDraft notClosing = new PackageDraft(
                "Does not close",
                segment,
                2020,
                Origin.SPECIFICATION,
                Invented.dimensions(2800)
                        .set(Dimension.OVERALL_LENGTH, 4800)
                        .set(Dimension.FRONT_OVERHANG, 900)
                        .set(Dimension.REAR_OVERHANG, 1000)
                        .build());

        assertThatThrownBy(() -> catalogue.add(notClosing, new Author(null, "Designer")))
                .isInstanceOf(ImpossibleDimensions.class);

        long id = catalogue
                .addAll(List.of(notClosing), new Author(null, "Designer"))
                .get(0);
        assertThat(catalogue.get(id).openQueries())
                .singleElement()
                .satisfies(query -> assertThat(query.cause()).isEqualTo(IssueCause.DOES_NOT_CLOSE));
    }

    @Test
    void findsByNameYearAndMeasureAndSortsByMeasure() {
        add("Long 100%", 2940);
        add("Short", 2590);
        add("Middle", 2800);

        assertThat(names(filter("100%", null), Sort.by("name"))).containsExactly("Long 100%");
        assertThat(names(filter("", null), Sort.by(Sort.Direction.DESC, MEASURE)))
                .containsExactly("Long 100%", "Middle", "Short");
        MeasureRange range = new MeasureRange(MEASURE, new studio.stancebook.quantity.Interval(3.9, 4.0));
        assertThat(names(filter("", range), Sort.by("name"))).containsExactly("Middle");
    }

    private CatalogueFilter filter(String text, @org.jspecify.annotations.Nullable MeasureRange range) {
        return new CatalogueFilter(text, segment, null, null, null, range);
    }

    private List<String> names(CatalogueFilter filter, Sort sort) {
        return catalogue
                .search(filter, PageRequest.of(0, 10, sort))
                .map(PackageSummary::name)
                .getContent();
    }
}
