package studio.stancebook.catalogue.internal;

import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.classes.layout.CurrentLayout;
import studio.stancebook.classes.layout.ValueLayout;

/** Finds packages in the database, but for measures. */
@Component
@Transactional(readOnly = true)
public class PackageSearch {

    private static final int AT_ONCE = 200;

    private final EntityManager entities;
    private final StoredPackages packages;
    private final PagesByName byName;
    private final DataIssues queries;
    private final CurrentLayout layouts;

    PackageSearch(
            EntityManager entities,
            StoredPackages packages,
            PagesByName byName,
            DataIssues queries,
            CurrentLayout layouts) {
        this.entities = entities;
        this.packages = packages;
        this.byName = byName;
        this.queries = queries;
        this.layouts = layouts;
    }

    /** A page of packages in the order of its sort: their ids are sorted, since to sort whole rows takes seconds. */
    public Page<PackageSummary> search(CatalogueFilter filter, Pageable page) {
        if (PagesByName.serves(filter, page.getSort())) {
            Page<StoredPackage> found = byName.page(filter, page);
            return new PageImpl<>(summariesOf(found.getContent(), filter), page, found.getTotalElements());
        }
        PackageCriteria criteria = new PackageCriteria(entities.getCriteriaBuilder(), filter);
        List<Long> found = entities.createQuery(criteria.ids(page.getSort()))
                .setFirstResult(Math.toIntExact(page.getOffset()))
                .setMaxResults(page.getPageSize())
                .getResultList();
        long total = entities.createQuery(criteria.count()).getSingleResult();
        return new PageImpl<>(summaries(found, filter), page, total);
    }

    /** The ids of all packages that a filter takes, measures left aside, in an order that names none. */
    public List<Long> ids(CatalogueFilter filter, Sort sort) {
        PackageCriteria criteria = new PackageCriteria(entities.getCriteriaBuilder(), filter);
        return entities.createQuery(criteria.ids(sort)).getResultList();
    }

    /** The packages of these ids in the order of the ids, with the value of the measure that the filter names. */
    public List<PackageSummary> summaries(List<Long> ids, CatalogueFilter filter) {
        if (ids.isEmpty()) {
            return List.of();
        }
        Map<Long, StoredPackage> kept =
                packages.findAll(ids).stream().collect(Collectors.toMap(StoredPackage::id, Function.identity()));
        return summariesOf(ids.stream().map(kept::get).filter(Objects::nonNull).toList(), filter);
    }

    private List<PackageSummary> summariesOf(List<StoredPackage> found, CatalogueFilter filter) {
        List<Long> ids = found.stream().map(StoredPackage::id).toList();
        Map<Long, Long> open = new HashMap<>();
        if (!ids.isEmpty()) {
            queries.countOpen(ids).forEach(count -> open.put(count.packageId(), count.open()));
        }
        return found.stream()
                .map(kept -> summary(kept, open.getOrDefault(kept.id(), 0L), shown(kept, filter)))
                .toList();
    }

    /** The value of the measure that the filter names; measured anew where another list of measures was kept. */
    private double shown(StoredPackage kept, CatalogueFilter filter) {
        ValueLayout layout = layouts.get();
        OptionalInt place = filter.measure() == null
                ? OptionalInt.empty()
                : layout.place(filter.measure().measure());
        if (place.isEmpty()) {
            return Double.NaN;
        }
        double[] values = kept.measureLayout().equals(layout.fingerprint())
                ? kept.measures()
                : layout.measuresOf(kept.dimensions());
        return values[place.getAsInt()];
    }

    private static PackageSummary summary(StoredPackage kept, long open, double shown) {
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
        PackageCriteria criteria = new PackageCriteria(entities.getCriteriaBuilder(), filter);
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
