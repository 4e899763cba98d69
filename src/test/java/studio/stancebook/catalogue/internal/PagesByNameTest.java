package studio.stancebook.catalogue.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.problem.ExpectedVersion;

/** Leafing through packages by name. */
abstract class PagesByNameTest {

    private static final Sort BY_NAME = Sort.by("name");

    /** The same order by another way: it is not the one that is served by itself. */
    private static final Sort ALSO_BY_NAME = Sort.by("name", "name");

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    private String segment = "";

    @BeforeEach
    void makeTwoSegmentsWithNamesOfEither() {
        segment = segment("leaf");
        String other = segment("other");
        for (String name : List.of("Eta", "Beta", "Alpha", "Zeta", "Delta", "Gamma", "Epsilon")) {
            add(segment, name, 2700);
            add(other, name, 2800);
        }
        PackageView gone = add(segment, "Beta two", 2750);
        catalogue.delete(gone.id(), new ExpectedVersion(gone.version()));
        PackageView apart = add(segment, "Theta", 2650);
        catalogue.setAside(apart.id(), "Measured with a load", new Author(null, "Lead of the tests"));
    }

    private String segment(String name) {
        String key = Invented.key(name);
        segments.create(key, "Segment of a test", "");
        return key;
    }

    private PackageView add(String toSegment, String name, double wheelbase) {
        return catalogue.add(Invented.draft(toSegment, name, wheelbase), new Author(null, "Designer of the tests"));
    }

    @Test
    void leafsThroughASegmentInTheOrderOfNames() {
        assertThat(leafed(CatalogueFilter.ofSegment(segment), 3))
                .containsExactly("Alpha", "Beta", "Delta", "Epsilon", "Eta", "Gamma", "Theta", "Zeta");
    }

    @Test
    void showsAllPackagesOnAPageThatHasRoomForMore() {
        long all = catalogue
                .search(CatalogueFilter.all(), PageRequest.of(0, 1, BY_NAME))
                .getTotalElements();

        Page<PackageSummary> page = catalogue.search(CatalogueFilter.all(), PageRequest.of(0, (int) all + 50, BY_NAME));

        assertThat(page.getContent()).hasSize((int) all);
        assertThat(page.getTotalElements()).isEqualTo(all);
    }

    private List<String> leafed(CatalogueFilter filter, int size) {
        List<String> names = new ArrayList<>();
        Page<PackageSummary> page = catalogue.search(filter, PageRequest.of(0, size, BY_NAME));
        names.addAll(page.map(PackageSummary::name).getContent());
        while (page.hasNext()) {
            page = catalogue.search(filter, page.nextPageable());
            names.addAll(page.map(PackageSummary::name).getContent());
        }
        assertThat(page.getTotalElements()).isEqualTo(names.size());
        return names;
    }

    @Test
    void leafsThroughAllPackagesAsAnyOtherOrderDoes() {
        for (int number : new int[] {0, 1, 2}) {
            PageRequest page = PageRequest.of(number, 5, BY_NAME);
            assertThat(catalogue.search(CatalogueFilter.all(), page).map(PackageSummary::id))
                    .isNotEmpty()
                    .containsExactlyElementsOf(catalogue
                            .search(CatalogueFilter.all(), page.withSort(ALSO_BY_NAME))
                            .map(PackageSummary::id));
        }
    }

    @Test
    void hasNoPackageBeyondTheLastPageNorInASegmentThatIsNotThere() {
        Page<PackageSummary> beyond =
                catalogue.search(CatalogueFilter.ofSegment(segment), PageRequest.of(9, 5, BY_NAME));
        assertThat(beyond).isEmpty();
        assertThat(beyond.getTotalElements()).isEqualTo(8);
        assertThat(catalogue.search(CatalogueFilter.ofSegment("not-there"), PageRequest.of(0, 5, BY_NAME)))
                .isEmpty();
    }
}
