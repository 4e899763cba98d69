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
        List<Size> sizes = segments.sizes();
        long all = sizes.stream().mapToLong(Size::packages).sum();
        Size asked = filter.segment() == null
                ? new Size(StoredPackages.EVERY_SEGMENT, "", all)
                : sizes.stream()
                        .filter(size -> size.key().equals(filter.segment()))
                        .findFirst()
                        .orElse(Size.NONE);
        return page.getOffset() < asked.packages()
                ? new PageImpl<>(found(asked, page, all), page, asked.packages())
                : new PageImpl<>(List.of(), page, asked.packages());
    }

    private List<StoredPackage> found(Size asked, Pageable page, long all) {
        int from = Math.toIntExact(page.getOffset());
        boolean ofAll = asked.id() == StoredPackages.EVERY_SEGMENT;
        return ofAll || isQuickByNames(asked.packages(), from + page.getPageSize(), all)
                ? packages.byName(asked.id(), from, page.getPageSize())
                : packages.ofSegmentByName(asked.id(), from, page.getPageSize());
    }

    /**
     * Whether fewer names have to be passed until the page is full than there are packages in the segment, taking these to
     * be spread evenly among the names.
     */
    private static boolean isQuickByNames(long ofSegment, long until, long all) {
        return until * all <= ofSegment * ofSegment;
    }
}
