package studio.stancebook.catalogue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Packages that were found, each with the values that they are sorted by. */
final class MeasuredRows {

    private static final int FIRST_ROOM = 1024;

    private long[] ids = new long[FIRST_ROOM];
    private final double[][] keys;
    private int size;

    /** @param orders by how many values they are sorted */
    MeasuredRows(int orders) {
        keys = new double[orders][FIRST_ROOM];
    }

    int size() {
        return size;
    }

    /** Adds a package without its values, which {@link #key} sets next. */
    void add(long id) {
        if (size == ids.length) {
            ids = Arrays.copyOf(ids, 2 * size);
            Arrays.setAll(keys, order -> Arrays.copyOf(keys[order], 2 * size));
        }
        ids[size++] = id;
    }

    /** Sets a value of the package that was added last; NaN, which comes last in either direction, where it has none. */
    void key(int order, double value, boolean ascending) {
        keys[order][size - 1] = ascending ? value + 0.0 : 0.0 - value;
    }

    /** The ids in ascending order. */
    long[] ids() {
        long[] sorted = Arrays.copyOf(ids, size);
        Arrays.sort(sorted);
        return sorted;
    }

    /**
     * The ids of a page. Only the packages whose first value lies within that of the page are put in order.
     *
     * @param offset how many come before the page
     * @param most how many the page holds
     * @param otherwise the order of those whose values are the same
     */
    List<Long> page(long offset, int most, Comparator<Long> otherwise) {
        if (offset >= size) {
            return List.of();
        }
        double[] sorted = Arrays.copyOf(keys[0], size);
        Arrays.sort(sorted);
        int from = (int) offset;
        double low = sorted[from];
        double high = sorted[Math.min(size, from + most) - 1];
        int before = firstPlace(sorted, low);
        return IntStream.range(0, size)
                .filter(i -> Double.compare(low, keys[0][i]) <= 0 && Double.compare(keys[0][i], high) <= 0)
                .boxed()
                .sorted(byKeys().thenComparing(i -> ids[i], otherwise))
                .skip(from - before)
                .limit(most)
                .map(i -> ids[i])
                .toList();
    }

    private Comparator<Integer> byKeys() {
        Comparator<Integer> order = Comparator.comparingDouble(i -> keys[0][i]);
        for (int next = 1; next < keys.length; next++) {
            double[] key = keys[next];
            order = order.thenComparingDouble(i -> key[i]);
        }
        return order;
    }

    private static int firstPlace(double[] sorted, double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (Double.compare(sorted[middle], value) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
