package studio.stancebook.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.internal.PackageSearch;
import studio.stancebook.classes.ClassRows;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.classes.RowBlock;
import studio.stancebook.classes.SetAsideRows;
import studio.stancebook.classes.layout.CurrentLayout;
import studio.stancebook.problem.Malformed;

/**
 * Finds packages by a part of their name and the values of measures, and sorts them by measures, model year and name, from the
 * classes in memory: the database would read and unpack every row of its table (decision 0078).
 */
@Component
class MeasuredPackages {

    /** What is kept with a class. */
    private enum Part {
        SET_ASIDE
    }

    private static final int AT_ONCE = 200;
    private static final String NAME = "name";
    private static final String MODEL_YEAR = "modelYear";

    private final ClassSnapshots snapshots;
    private final SetAsideRows setAside;
    private final CurrentLayout layouts;
    private final PackageSearch search;

    MeasuredPackages(ClassSnapshots snapshots, SetAsideRows setAside, CurrentLayout layouts, PackageSearch search) {
        this.snapshots = snapshots;
        this.setAside = setAside;
        this.layouts = layouts;
        this.search = search;
    }

    /** Whether memory has what a filter or an order asks for. */
    boolean concerns(CatalogueFilter filter, Sort sort) {
        return filter.measure() != null
                || !filter.words().isEmpty()
                || sort.stream().limit(1).anyMatch(order -> order.getProperty().equals(MODEL_YEAR))
                || sort.stream().anyMatch(this::isMeasure);
    }

    private boolean isInMemory(Sort.Order order) {
        return List.of(NAME, MODEL_YEAR).contains(order.getProperty()) || isMeasure(order);
    }

    private boolean isMeasure(Sort.Order order) {
        return layouts.get().place(order.getProperty()).isPresent();
    }

    /** A page of packages in the order of its sort; by name where it has none. */
    Page<PackageSummary> search(CatalogueFilter filter, Pageable page) {
        List<Sort.Order> inMemory = page.getSortOr(Sort.by(NAME)).stream()
                .takeWhile(this::isInMemory)
                .toList();
        Sort rest = Sort.by(page.getSort().stream().skip(inMemory.size()).toList());
        rest.stream().filter(this::isMeasure).findFirst().ifPresent(order -> {
            throw Malformed.ofField(
                    "sort", "A measure comes before all other orders: sort by " + order.getProperty() + " first.");
        });
        MeasuredRows found = find(filter, inMemory);
        Comparator<Integer> order = order(found, filter, inMemory, rest);
        boolean byNumber = !inMemory.isEmpty() && !inMemory.get(0).getProperty().equals(NAME);
        List<Long> ids = byNumber
                ? found.pageByFirstKey(page.getOffset(), page.getPageSize(), order)
                : found.page(page.getOffset(), page.getPageSize(), order);
        return new PageImpl<>(search.summaries(ids, filter), page, found.size());
    }

    private Comparator<Integer> order(
            MeasuredRows found, CatalogueFilter filter, List<Sort.Order> inMemory, Sort rest) {
        List<Comparator<Integer>> orders = new ArrayList<>();
        for (int i = 0; i < inMemory.size(); i++) {
            orders.add(order(found, inMemory.get(i), i));
        }
        if (rest.isSorted()) {
            Map<Long, Integer> places = new HashMap<>();
            search.ids(filter, rest).forEach(id -> places.put(id, places.size()));
            orders.add(Comparator.comparingInt(row -> places.getOrDefault(found.id(row), Integer.MAX_VALUE)));
        }
        orders.add(Comparator.comparingLong(found::id));
        return orders.stream().reduce(Comparator::thenComparing).orElseThrow();
    }

    private static Comparator<Integer> order(MeasuredRows found, Sort.Order order, int place) {
        if (!order.getProperty().equals(NAME)) {
            return found.byKey(place);
        }
        return order.isAscending() ? found.byName() : found.byName().reversed();
    }

    /** Hands over the ids of all packages that a filter takes, ascending and some at a time. */
    void forEach(CatalogueFilter filter, Consumer<List<Long>> consumer) {
        long[] ids = find(filter, List.of()).ids();
        for (int from = 0; from < ids.length; from += AT_ONCE) {
            consumer.accept(Arrays.stream(ids, from, Math.min(ids.length, from + AT_ONCE))
                    .boxed()
                    .toList());
        }
    }

    private MeasuredRows find(CatalogueFilter filter, List<Sort.Order> orders) {
        MeasureRange range = filter.measure();
        if (range != null && layouts.get().place(range.measure()).isEmpty()) {
            throw Malformed.ofField("measure", "There is no measure " + range.measure() + ".");
        }
        MeasuredRows found = new MeasuredRows(orders.size());
        Map<String, ClassSnapshot> classes = snapshots.all();
        List<ClassSnapshot> wanted = new ArrayList<>(classes.values());
        wanted.removeIf(one -> filter.segment() != null && !filter.segment().equals(one.segment()));
        wanted.forEach(one -> find(one, filter, orders, found));
        return found;
    }

    private void find(ClassSnapshot one, CatalogueFilter filter, List<Sort.Order> orders, MeasuredRows found) {
        ClassRows aside = one.derived(Part.SET_ASIDE, () -> setAside.of(one));
        Taker taker = new Taker(one, filter, orders, found);
        one.rows().forEach((block, row) -> {
            if (!aside.has(block.id(row))) {
                taker.read(block, row);
            }
        });
        aside.forEach(taker);
    }

    /** What a row is sorted by. */
    private interface RowValue {
        double of(RowBlock block, int row);
    }

    /** Takes the rows of a class that a filter takes. */
    private static final class Taker implements ClassRows.RowVisitor {

        private final CatalogueFilter filter;
        private final String words;
        private final MeasuredRows found;
        private final int ranged;
        private final List<RowValue> keys;
        private final boolean[] ascending;

        Taker(ClassSnapshot one, CatalogueFilter filter, List<Sort.Order> orders, MeasuredRows found) {
            this.filter = filter;
            this.words = filter.words().toLowerCase(Locale.ROOT);
            this.found = found;
            MeasureRange range = filter.measure();
            this.ranged = range == null ? -1 : place(one, range.measure());
            this.keys =
                    orders.stream().map(order -> key(one, order.getProperty())).toList();
            this.ascending = new boolean[orders.size()];
            for (int i = 0; i < ascending.length; i++) {
                ascending[i] = orders.get(i).isAscending();
            }
        }

        /** Names, which are no numbers, are looked at where they are. */
        private static RowValue key(ClassSnapshot one, String property) {
            if (property.equals(MODEL_YEAR)) {
                return (block, row) -> block.modelYear(row) > 0 ? block.modelYear(row) : Double.NaN;
            }
            int place = place(one, property);
            return (block, row) -> value(block, row, place);
        }

        /** A measure that went while the class was read has no value. */
        private static int place(ClassSnapshot one, String measure) {
            OptionalInt place = one.place(measure);
            return place.orElse(-1);
        }

        @Override
        public void read(RowBlock block, int row) {
            if (takes(block, row)) {
                found.add(block, row);
                for (int i = 0; i < ascending.length; i++) {
                    found.key(i, keys.get(i).of(block, row), ascending[i]);
                }
            }
        }

        private static double value(RowBlock block, int row, int place) {
            return place < 0 ? Double.NaN : block.value(row, place);
        }

        private boolean takes(RowBlock block, int row) {
            MeasureRange range = filter.measure();
            return (range == null || range.values().contains(value(block, row, ranged)))
                    && inYears(block.modelYear(row))
                    && (filter.origin() == null || filter.origin().ordinal() == block.origin(row))
                    && (words.isEmpty()
                            || block.name(row).toLowerCase(Locale.ROOT).contains(words));
        }

        private boolean inYears(int year) {
            boolean unlimited = filter.fromYear() == null && filter.toYear() == null;
            return unlimited
                    || year > 0
                            && (filter.fromYear() == null || filter.fromYear() <= year)
                            && (filter.toYear() == null || year <= filter.toYear());
        }
    }
}
