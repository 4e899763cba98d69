package studio.stancebook.statistics;

import java.util.Arrays;

/**
 * Radix sort of doubles, from the least significant digit to the most (D. E. Knuth, The Art of Computer Programming 3,
 * 5.2.5, Algorithm R, from memory). It orders by the bits of a number, which for numbers of one sign are in the order of
 * their values; digits that all values share, as most of the exponent in a class, cost no pass.
 */
final class RadixSort {

    /** Below so many values {@link Arrays#sort(double[])} is as quick. */
    static final int WORTH_IT_FROM = 2_000;

    private static final int DIGIT_BITS = 11;
    private static final int BUCKETS = 1 << DIGIT_BITS;
    private static final int DIGITS = (Long.SIZE + DIGIT_BITS - 1) / DIGIT_BITS;

    private RadixSort() {}

    /**
     * Puts values into the order of {@link Arrays#sort(double[])}, with -0 before 0. Takes as much room again while it runs.
     *
     * @param values without NaN
     */
    static void sort(double[] values) {
        if (values.length < WORTH_IT_FROM) {
            Arrays.sort(values);
        } else {
            sortByDigits(values);
        }
    }

    static void sortByDigits(double[] values) {
        int[][] counts = counts(values);
        double[] from = values;
        double[] to = new double[values.length];
        for (int digit = 0; digit < DIGITS; digit++) {
            if (!isShared(counts[digit], values.length)) {
                distribute(from, to, digit * DIGIT_BITS, starts(counts[digit]));
                double[] sorted = to;
                to = from;
                from = sorted;
            }
        }
        if (from != values) {
            System.arraycopy(from, 0, values, 0, values.length);
        }
    }

    /** How often each digit has each value. */
    private static int[][] counts(double[] values) {
        int[][] counts = new int[DIGITS][BUCKETS];
        for (double value : values) {
            long key = key(value);
            for (int digit = 0; digit < DIGITS; digit++) {
                counts[digit][bucket(key, digit * DIGIT_BITS)]++;
            }
        }
        return counts;
    }

    private static boolean isShared(int[] counts, int n) {
        for (int count : counts) {
            if (count > 0) {
                return count == n;
            }
        }
        return true;
    }

    /** Where each bucket begins. */
    private static int[] starts(int[] counts) {
        int[] starts = new int[BUCKETS];
        for (int i = 1; i < BUCKETS; i++) {
            starts[i] = starts[i - 1] + counts[i - 1];
        }
        return starts;
    }

    /** Values of one bucket stay in their order. */
    private static void distribute(double[] from, double[] to, int shift, int[] places) {
        for (double value : from) {
            to[places[bucket(key(value), shift)]++] = value;
        }
    }

    private static int bucket(long key, int shift) {
        return (int) (key >>> shift) & BUCKETS - 1;
    }

    /** Unsigned, in the order of the values: the sign bit is turned, and for a negative number all others as well. */
    private static long key(double value) {
        long bits = Double.doubleToRawLongBits(value);
        return bits ^ (bits >> Long.SIZE - 1 | Long.MIN_VALUE);
    }
}
