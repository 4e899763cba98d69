package studio.stancebook.classes;

import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What became of a class: packages that left, and packages that came or are not what they were, each in ascending order.
 * A package among both left and came back.
 */
record ClassChange(NavigableMap<Long, ClassRow> rows, NavigableSet<Long> departed) {

    static ClassChange of(Collection<ClassRow> rows, Collection<Long> departed) {
        NavigableMap<Long, ClassRow> byId = new TreeMap<>();
        rows.forEach(row -> byId.put(row.id(), row));
        return new ClassChange(byId, new TreeSet<>(departed));
    }

    static ClassChange rows(List<ClassRow> rows) {
        return of(rows, List.of());
    }

    boolean isEmpty() {
        return rows.isEmpty() && departed.isEmpty();
    }

    boolean concerns(long id) {
        return rows.containsKey(id) || departed.contains(id);
    }

    /** The part that concerns ids below this one. */
    ClassChange before(long id) {
        return new ClassChange(rows.headMap(id, false), departed.headSet(id, false));
    }

    /** What is left when a part before an id is done with. */
    ClassChange after(ClassChange part) {
        NavigableMap<Long, ClassRow> rest = part.rows.isEmpty() ? rows : rows.tailMap(part.rows.lastKey(), false);
        NavigableSet<Long> left = part.departed.isEmpty() ? departed : departed.tailSet(part.departed.last(), false);
        return new ClassChange(rest, left);
    }
}
