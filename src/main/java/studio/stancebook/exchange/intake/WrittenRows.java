package studio.stancebook.exchange.intake;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;

/** Ids of packages in ascending order, each with the row it came from, in 12 bytes each. */
final class WrittenRows {

    private long[] ids = new long[64];
    private int[] rows = new int[64];
    private int size;

    /** @param id greater than those before, as the catalogue numbers what is brought in */
    void add(long id, long row) {
        if (size == ids.length) {
            ids = Arrays.copyOf(ids, 2 * size);
            rows = Arrays.copyOf(rows, 2 * size);
        }
        ids[size] = id;
        rows[size++] = Math.toIntExact(row);
    }

    int size() {
        return size;
    }

    /** The ids, as a view. */
    List<Long> ids() {
        return new AbstractList<>() {
            @Override
            public Long get(int index) {
                return ids[index];
            }

            @Override
            public int size() {
                return size;
            }
        };
    }

    /** The row that a package came from. */
    int rowOf(long id) {
        return rows[Arrays.binarySearch(ids, 0, size, id)];
    }
}
