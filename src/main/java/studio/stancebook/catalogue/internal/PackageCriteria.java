package studio.stancebook.catalogue.internal;

import jakarta.persistence.criteria.CriteriaBuilder;
import jakarta.persistence.criteria.CriteriaQuery;
import jakarta.persistence.criteria.Expression;
import jakarta.persistence.criteria.Nulls;
import jakarta.persistence.criteria.Order;
import jakarta.persistence.criteria.Predicate;
import jakarta.persistence.criteria.Root;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hibernate.query.criteria.HibernateCriteriaBuilder;
import org.springframework.data.domain.Sort;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.problem.Malformed;

/** A filter of packages as conditions of a database query, but for measures, which the database does not look at. */
final class PackageCriteria {

    private static final String SORTS = "name, segment, modelYear, changedAt or the key of a measure";

    private final HibernateCriteriaBuilder builder;
    private final CatalogueFilter filter;

    PackageCriteria(CriteriaBuilder builder, CatalogueFilter filter) {
        this.builder = (HibernateCriteriaBuilder) builder;
        this.filter = filter;
    }

    CriteriaQuery<Long> count() {
        CriteriaQuery<Long> query = builder.createQuery(Long.class);
        Root<StoredPackage> root = query.from(StoredPackage.class);
        return query.select(builder.count(root)).where(conditions(root));
    }

    CriteriaQuery<Long> ids(Sort sort) {
        CriteriaQuery<Long> query = builder.createQuery(Long.class);
        Root<StoredPackage> root = query.from(StoredPackage.class);
        return query.select(root.get("id")).where(conditions(root)).orderBy(orders(root, sort));
    }

    CriteriaQuery<Long> idsAfter(long id) {
        CriteriaQuery<Long> query = builder.createQuery(Long.class);
        Root<StoredPackage> root = query.from(StoredPackage.class);
        List<Predicate> conditions = new ArrayList<>(List.of(conditions(root)));
        conditions.add(builder.greaterThan(root.get("id"), id));
        return query.select(root.get("id"))
                .where(conditions.toArray(Predicate[]::new))
                .orderBy(builder.asc(root.get("id")));
    }

    private Predicate[] conditions(Root<StoredPackage> root) {
        List<Predicate> all = new ArrayList<>();
        if (!filter.words().isEmpty()) {
            all.add(builder.like(builder.lower(root.get("name")), pattern(filter.words()), '\\'));
        }
        if (filter.segment() != null) {
            all.add(builder.equal(root.get("segment").get("segmentKey"), filter.segment()));
        }
        if (filter.fromYear() != null) {
            all.add(builder.greaterThanOrEqualTo(root.get("modelYear"), filter.fromYear()));
        }
        if (filter.toYear() != null) {
            all.add(builder.lessThanOrEqualTo(root.get("modelYear"), filter.toYear()));
        }
        if (filter.origin() != null) {
            all.add(builder.equal(root.get("origin"), filter.origin()));
        }
        return all.toArray(Predicate[]::new);
    }

    private static String pattern(String text) {
        String escaped = text.toLowerCase(Locale.ROOT).replaceAll("([%_\\\\])", "\\\\$1");
        return "%" + escaped + "%";
    }

    private List<Order> orders(Root<StoredPackage> root, Sort sort) {
        List<Order> orders = new ArrayList<>();
        sort.forEach(order -> orders.add(
                order.isAscending()
                        ? builder.asc(sorted(root, order.getProperty()), Nulls.LAST)
                        : builder.desc(sorted(root, order.getProperty()), Nulls.LAST)));
        if (orders.isEmpty()) {
            orders.add(builder.asc(root.get("name")));
        }
        orders.add(builder.asc(root.get("id")));
        return orders;
    }

    private Expression<?> sorted(Root<StoredPackage> root, String property) {
        return switch (property) {
            case "name", "modelYear", "changedAt" -> root.get(property);
            case "segment" -> root.get("segment").get("name");
            default ->
                throw Malformed.ofField(
                        "sort", "\"" + property + "\" is no order: packages are sorted by " + SORTS + ".");
        };
    }
}
