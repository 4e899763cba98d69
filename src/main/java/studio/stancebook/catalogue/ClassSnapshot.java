package studio.stancebook.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.internal.ClassRows;
import studio.stancebook.catalogue.internal.ClassUpdate;
import studio.stancebook.catalogue.internal.ValueLayout;
import studio.stancebook.statistics.SortedColumn;

/**
 * The class of a segment at one revision: for every measure the values of the packages that are not set aside. It never
 * changes, and any number of threads may read it.
 */
public final class ClassSnapshot {

    private final String segment;
    private final long revision;
    private final ValueLayout layout;
    private final ClassRows rows;
    private final AtomicReferenceArray<SortedColumn> columns;

    ClassSnapshot(String segment, long revision, ValueLayout layout, ClassRows rows) {
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

    /** The part of this class that a filter takes. */
    ClassSnapshot filtered(ClassFilter filter) {
        return filter.takesAll() ? this : new ClassSnapshot(segment, revision, layout, rows.only(filter));
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
        if (known == null) {
            known = SortedColumn.of(rows.values(place));
            columns.set(place, known);
        }
        return known;
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

    /** Reads the packages one by one, in ascending order of their ids; for this module alone. */
    public void forEachRow(ClassRows.RowReader reader) {
        rows.forEach(reader);
    }

    ClassRows rows() {
        return rows;
    }

    ValueLayout layout() {
        return layout;
    }

    @Override
    public String toString() {
        return "class of " + segment + " at revision " + revision + ": " + packages() + " packages";
    }
}
