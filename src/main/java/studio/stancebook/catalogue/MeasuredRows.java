package studio.stancebook.catalogue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import studio.stancebook.catalogue.internal.RowBlock;

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
        if (offset >= end) {
            return List.of();
        }
        PriorityQueue<Integer> first = new PriorityQueue<>(order.reversed());
        for (int i = 0; i < size; i++) {
            if (first.size() < end) {
                first.add(i);
            } else if (order.compare(i, first.element()) < 0) {
                first.remove();
                first.add(i);
            }
        }
        return first.stream().sorted(order).skip(offset).map(this::id).toList();
    }
}
