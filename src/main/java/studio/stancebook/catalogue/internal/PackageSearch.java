package studio.stancebook.catalogue.internal;

import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageSummary;

/** Finds packages. */
@Component
@Transactional(readOnly = true)
public class PackageSearch {

    private static final int AT_ONCE = 200;

    private final EntityManager entities;
    private final PagesByName byName;
    private final StoredQueries queries;
    private final CurrentLayout layouts;

    PackageSearch(EntityManager entities, PagesByName byName, StoredQueries queries, CurrentLayout layouts) {
        this.entities = entities;
        this.byName = byName;
        this.queries = queries;
        this.layouts = layouts;
    }

    /** A page of packages in the order of its sort. */
    public Page<PackageSummary> search(CatalogueFilter filter, Pageable page) {
        ValueLayout layout = layouts.get();
        if (PagesByName.serves(filter, page.getSort())) {
            Page<StoredPackage> found = byName.page(filter, page);
            return new PageImpl<>(summaries(found.getContent(), filter, layout), page, found.getTotalElements());
        }
        PackageCriteria criteria = new PackageCriteria(entities.getCriteriaBuilder(), filter, layout);
        List<StoredPackage> found = entities.createQuery(criteria.page(page.getSort()))
                .setFirstResult(Math.toIntExact(page.getOffset()))
                .setMaxResults(page.getPageSize())
                .getResultList();
        long total = entities.createQuery(criteria.count()).getSingleResult();
        return new PageImpl<>(summaries(found, filter, layout), page, total);
    }

    private List<PackageSummary> summaries(List<StoredPackage> found, CatalogueFilter filter, ValueLayout layout) {
        List<Long> ids = found.stream().map(StoredPackage::id).toList();
        Map<Long, Long> open = new HashMap<>();
        if (!ids.isEmpty()) {
            queries.countOpen(ids).forEach(count -> open.put(count.packageId(), count.open()));
        }
        OptionalInt place = filter.measure() == null
                ? OptionalInt.empty()
                : layout.place(filter.measure().measure());
        return found.stream()
                .map(kept -> summary(kept, open.getOrDefault(kept.id(), 0L), place))
                .toList();
    }

    private static PackageSummary summary(StoredPackage kept, long open, OptionalInt place) {
        double shown = place.isEmpty() ? Double.NaN : kept.measures()[place.getAsInt()];
        return new PackageSummary(
                kept.id(),
                kept.version(),
                kept.name(),
                kept.segment().key(),
                kept.segment().name(),
                kept.modelYear(),
                kept.origin(),
                kept::dimensions,
                !kept.counts(),
                Math.toIntExact(open),
                Double.isNaN(shown) ? OptionalDouble.empty() : OptionalDouble.of(shown),
                kept.changedAt(),
                kept.changedBy());
    }

    /**
     * Hands over the ids of all packages that the filter takes, ascending and some at a time. Without a transaction, so that
     * no connection waits while the ids are worked on.
     */
    @Transactional(propagation = Propagation.NOT_SUPPORTED)
    public void forEach(CatalogueFilter filter, Consumer<List<Long>> consumer) {
        PackageCriteria criteria = new PackageCriteria(entities.getCriteriaBuilder(), filter, layouts.get());
        List<Long> ids = idsAfter(criteria, 0);
        while (!ids.isEmpty()) {
            consumer.accept(ids);
            ids = idsAfter(criteria, ids.get(ids.size() - 1));
        }
    }

    private List<Long> idsAfter(PackageCriteria criteria, long after) {
        return entities.createQuery(criteria.idsAfter(after))
                .setMaxResults(AT_ONCE)
                .getResultList();
    }
}
