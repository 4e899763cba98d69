package studio.stancebook.catalogue.internal;

import java.util.List;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.internal.StoredSegments.Size;

/**
 * Pages of the packages of a segment, or of all, by name: the list that people leaf through. How many there are is known
 * from the segments, and only the packages of the page itself are read (decision 0091).
 */
@Component
class PagesByName {

    private final StoredPackages packages;
    private final StoredSegments segments;

    PagesByName(StoredPackages packages, StoredSegments segments) {
        this.packages = packages;
        this.segments = segments;
    }

    /** Whether this filter and order are those of such a page. */
    static boolean serves(CatalogueFilter filter, Sort sort) {
        return filter.equals(new CatalogueFilter("", filter.segment(), null, null, null, null))
                && (sort.isUnsorted() || sort.equals(Sort.by("name")));
    }

    Page<StoredPackage> page(CatalogueFilter filter, Pageable page) {
        int from = Math.toIntExact(page.getOffset());
        int most = page.getPageSize();
        if (filter.segment() == null) {
            long all = segments.sizes().stream().mapToLong(Size::packages).sum();
            return new PageImpl<>(packages.byName(from, most), page, all);
        }
        return segments.sizes().stream()
                .filter(size -> size.key().equals(filter.segment()))
                .findFirst()
                .map(size -> new PageImpl<>(packages.ofSegmentByName(size.id(), from, most), page, size.packages()))
                .orElseGet(() -> new PageImpl<>(List.of(), page, 0));
    }
}
