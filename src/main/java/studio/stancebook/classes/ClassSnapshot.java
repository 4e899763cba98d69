package studio.stancebook.classes;

import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import studio.stancebook.classes.ClassReader.PastRows;
import studio.stancebook.classes.layout.ClassLayout;
import studio.stancebook.statistics.SortedColumn;

/**
 * The class of a segment at one revision: for every measure the values of the packages that are not set aside. It never
 * changes, and any number of threads may read it.
 */
public final class ClassSnapshot {

    private final String segment;
    private final long revision;
    private final ClassLayout layout;
    private final ClassRows rows;
    private final AtomicReferenceArray<SortedColumn> columns;
    private final ReentrantLock sorting = new ReentrantLock();
    private final Map<Object, Once<?>> derived = new ConcurrentHashMap<>();
    private volatile SoftReference<Part> lastPart = new SoftReference<>(null);

    private volatile SoftReference<PastClass> lastPast = new SoftReference<>(null);

    /** The part that was asked for last. */
    private record Part(ClassFilter filter, ClassSnapshot snapshot) {}

    ClassSnapshot(String segment, long revision, ClassLayout layout, ClassRows rows) {
        this.segment = segment;
        this.revision = revision;
        this.layout = layout;
        this.rows = rows;
        this.columns = new AtomicReferenceArray<>(layout.size());
    }

    /** The class after an update of this one; columns that were sorted already are carried over. */
    ClassSnapshot updated(long toRevision, ClassRows toRows, ClassUpdate update) {
        ClassSnapshot next = new ClassSnapshot(segment, toRevision, layout, toRows);
        for (int i = 0; i < columns.length(); i++) {
            SortedColumn known = columns.get(i);
            if (known != null) {
                next.columns.set(i, update.updated(known, i));
            }
        }
        return next;
    }

    /** The part of this class that a filter takes; the one asked for last is kept while there is room. */
    public ClassSnapshot part(ClassFilter filter) {
        if (filter.takesAll()) {
            return this;
        }
        Part known = lastPart.get();
        if (known == null || !known.filter().equals(filter)) {
            known = new Part(filter, new ClassSnapshot(segment, revision, layout, rows.only(filter)));
            lastPart = new SoftReference<>(known);
        }
        return known.snapshot();
    }

    /** This class at an earlier revision; the one asked for last is kept while there is room. */
    PastClass past(long earlier, Supplier<PastRows> read) {
        PastClass known = lastPast.get();
        if (known == null || known.snapshot().revision() != earlier) {
            PastRows past = read.get();
            known = new PastClass(new ClassSnapshot(segment, earlier, layout, past.rows()), past.missing());
            lastPast = new SoftReference<>(known);
        }
        return known;
    }

    /**
     * Something that depends on this class alone: computed when it is first asked for, and kept as long as the class is the
     * same. Whoever asks meanwhile waits for it.
     *
     * @param key tells it from all else; its class belongs to whoever asks
     */
    @SuppressWarnings("unchecked") // who owns the class of the key uses one type for it
    public <T> T derived(Object key, Supplier<T> computed) {
        return ((Once<T>) derived.computeIfAbsent(key, none -> new Once<T>())).get(computed);
    }

    /** A value that is computed once. */
    private static final class Once<T> {

        private @Nullable T value;

        synchronized T get(Supplier<T> computed) {
            T known = value;
            if (known == null) {
                known = computed.get();
                value = known;
            }
            return known;
        }
    }

    /** The key of the segment. */
    public String segment() {
        return segment;
    }

    /** How often the class had changed. */
    public long revision() {
        return revision;
    }

    /** How many packages count. */
    public int packages() {
        return rows.size();
    }

    /** The keys of the measures that it has columns for, in the order in which they are shown. */
    public List<String> measures() {
        return layout.keys();
    }

    /** The values of a measure; empty when no package has it, or when there is no such measure. */
    public SortedColumn column(String measure) {
        OptionalInt place = layout.place(measure);
        return place.isEmpty() ? SortedColumn.empty() : column(place.getAsInt());
    }

    private SortedColumn column(int place) {
        @Nullable SortedColumn known = columns.get(place);
        return known == null ? sorted(place) : known;
    }

    /** One sorts, the others wait: that is no slower, and takes the room once. */
    private SortedColumn sorted(int place) {
        sorting.lock();
        try {
            @Nullable SortedColumn known = columns.get(place);
            if (known == null) {
                known = SortedColumn.of(rows.values(place));
                columns.set(place, known);
            }
            return known;
        } finally {
            sorting.unlock();
        }
    }

    /** The packages that have a value of a measure, in ascending order of their ids. */
    public List<Tick> ticks(String measure) {
        OptionalInt place = layout.place(measure);
        List<Tick> ticks = new ArrayList<>();
        if (place.isPresent()) {
            rows.forEach((block, row) -> {
                double value = block.value(row, place.getAsInt());
                if (!Double.isNaN(value)) {
                    ticks.add(new Tick(block.id(row), block.name(row), value));
                }
            });
        }
        return ticks;
    }

    /** The packages that have values of both measures, in ascending order of their ids. */
    public List<Pair> pairs(String x, String y) {
        OptionalInt placeX = layout.place(x);
        OptionalInt placeY = layout.place(y);
        List<Pair> pairs = new ArrayList<>();
        if (placeX.isPresent() && placeY.isPresent()) {
            rows.forEach((block, row) -> {
                double valueX = block.value(row, placeX.getAsInt());
                double valueY = block.value(row, placeY.getAsInt());
                if (!Double.isNaN(valueX) && !Double.isNaN(valueY)) {
                    pairs.add(new Pair(block.id(row), block.name(row), valueX, valueY));
                }
            });
        }
        return pairs;
    }

    /** The place of a measure in each row; empty when there is no such measure. */
    public OptionalInt place(String measure) {
        return layout.place(measure);
    }

    /** Reads those of the packages that have one of these ids. */
    public void forEachRow(Collection<Long> ids, ClassRows.RowVisitor reader) {
        rows.forEach(ids, reader);
    }

    /** The packages, row by row. */
    public ClassRows rows() {
        return rows;
    }

    ClassLayout layout() {
        return layout;
    }

    @Override
    public String toString() {
        return "class of " + segment + " at revision " + revision + ": " + packages() + " packages";
    }
}
