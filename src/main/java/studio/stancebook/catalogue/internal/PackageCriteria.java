package studio.stancebook.catalogue.internal;

import jakarta.persistence.criteria.CriteriaBuilder;
import jakarta.persistence.criteria.CriteriaQuery;
import jakarta.persistence.criteria.Expression;
import jakarta.persistence.criteria.JoinType;
import jakarta.persistence.criteria.Nulls;
import jakarta.persistence.criteria.Order;
import jakarta.persistence.criteria.Path;
import jakarta.persistence.criteria.Predicate;
import jakarta.persistence.criteria.Root;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.hibernate.query.criteria.HibernateCriteriaBuilder;
import org.springframework.data.domain.Sort;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.MeasureRange;
import studio.stancebook.problem.Malformed;

/** A filter of packages as conditions of a database query. */
final class PackageCriteria {

    private static final String SORTS = "name, segment, modelYear, changedAt or the key of a measure";

    private final HibernateCriteriaBuilder builder;
    private final CatalogueFilter filter;
    private final ValueLayout layout;

    PackageCriteria(CriteriaBuilder builder, CatalogueFilter filter, ValueLayout layout) {
        this.builder = (HibernateCriteriaBuilder) builder;
        this.filter = filter;
        this.layout = layout;
    }

    CriteriaQuery<StoredPackage> page(Sort sort) {
        CriteriaQuery<StoredPackage> query = builder.createQuery(StoredPackage.class);
        Root<StoredPackage> root = query.from(StoredPackage.class);
        root.fetch("segment", JoinType.INNER);
        return query.select(root).where(conditions(root)).orderBy(orders(root, sort));
    }

    CriteriaQuery<Long> count() {
        CriteriaQuery<Long> query = builder.createQuery(Long.class);
        Root<StoredPackage> root = query.from(StoredPackage.class);
        return query.select(builder.count(root)).where(conditions(root));
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
        if (filter.measure() != null) {
            all.addAll(inRange(root, filter.measure()));
        }
        return all.toArray(Predicate[]::new);
    }

    private static String pattern(String text) {
        String escaped = text.toLowerCase(Locale.ROOT).replaceAll("([%_\\\\])", "\\\\$1");
        return "%" + escaped + "%";
    }

    private List<Predicate> inRange(Root<StoredPackage> root, MeasureRange range) {
        OptionalInt place = layout.place(range.measure());
        if (place.isEmpty()) {
            throw Malformed.ofField("measure", "There is no measure " + range.measure() + ".");
        }
        Expression<Double> value = value(root, place.getAsInt());
        List<Predicate> limits = new ArrayList<>();
        limits.add(builder.equal(root.get("measureLayout"), layout.fingerprint()));
        limits.add(builder.isNotNull(value));
        if (Double.isFinite(range.values().lower())) {
            limits.add(builder.ge(value, range.values().lower()));
        }
        if (Double.isFinite(range.values().upper())) {
            limits.add(builder.le(value, range.values().upper()));
        }
        return limits;
    }

    private Expression<Double> value(Root<StoredPackage> root, int place) {
        Path<Double[]> measures = root.get("measures");
        return builder.arrayGet(measures, place + 1);
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
                layout.place(property).stream()
                        .mapToObj(place -> value(root, place))
                        .findFirst()
                        .orElseThrow(() -> Malformed.ofField(
                                "sort", "\"" + property + "\" is no order: packages are sorted by " + SORTS + "."));
        };
    }
}
