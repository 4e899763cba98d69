package studio.stancebook.catalogue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import studio.stancebook.classes.RowBlock;

/** Packages that were found, numbered from 0, each with the values that they are sorted by. */
final class MeasuredRows {

    private static final int FIRST_ROOM = 1024;

    private RowBlock[] blocks = new RowBlock[FIRST_ROOM];
    private int[] rows = new int[FIRST_ROOM];
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
    void add(RowBlock block, int row) {
        if (size == rows.length) {
            blocks = Arrays.copyOf(blocks, 2 * size);
            rows = Arrays.copyOf(rows, 2 * size);
            Arrays.setAll(keys, order -> Arrays.copyOf(keys[order], 2 * size));
        }
        blocks[size] = block;
        rows[size++] = row;
    }

    /** Sets a value of the package that was added last; NaN, which comes last in either direction, where it has none. */
    void key(int order, double value, boolean ascending) {
        keys[order][size - 1] = ascending ? value + 0.0 : 0.0 - value;
    }

    /** The ids in ascending order. */
    long[] ids() {
        long[] sorted = new long[size];
        Arrays.setAll(sorted, this::id);
        Arrays.sort(sorted);
        return sorted;
    }

    long id(int found) {
        return blocks[found].id(rows[found]);
    }

    /** The order of one of the values. */
    Comparator<Integer> byKey(int order) {
        double[] key = keys[order];
        return (one, other) -> Double.compare(key[one], key[other]);
    }

    /** The order of the names, character by character as Unicode numbers them. */
    Comparator<Integer> byName() {
        return (one, other) -> blocks[one].compareName(rows[one], blocks[other], rows[other]);
    }

    /**
     * The ids of a page. Only as many packages as come before its end are put in order.
     *
     * @param offset how many come before the page
     * @param most how many the page holds
     * @param order in which no two are the same
     */
    List<Long> page(long offset, int most, Comparator<Integer> order) {
        int end = (int) Math.min(size, offset + most);
        return offset < end ? inOrder(IntStream.range(0, size), (int) offset, end, order) : List.of();
    }

    /** The same in an order that begins with the first value: only packages whose first value is on the page are put in order. */
    List<Long> pageByFirstKey(long offset, int most, Comparator<Integer> order) {
        int end = (int) Math.min(size, offset + most);
        if (offset >= end) {
            return List.of();
        }
        double[] key = keys[0];
        double[] sorted = Arrays.copyOf(key, size);
        Arrays.sort(sorted);
        double low = sorted[(int) offset];
        double high = sorted[end - 1];
        int before = (int) Arrays.stream(sorted)
                .takeWhile(value -> Double.compare(value, low) < 0)
                .count();
        IntStream onPage = IntStream.range(0, size)
                .filter(i -> Double.compare(low, key[i]) <= 0 && Double.compare(key[i], high) <= 0);
        return inOrder(onPage, (int) offset - before, end - before, order);
    }

    private List<Long> inOrder(IntStream found, int from, int end, Comparator<Integer> order) {
        PriorityQueue<Integer> first = new PriorityQueue<>(order.reversed());
        found.forEach(i -> {
            if (first.size() < end) {
                first.add(i);
            } else if (order.compare(i, first.element()) < 0) {
                first.remove();
                first.add(i);
            }
        });
        return first.stream().sorted(order).skip(from).map(this::id).toList();
    }
}
