package studio.stancebook.statistics;

/** Where a number stands among ascending values. */
final class Ranks {

    private Ranks() {}

    /** How many values are smaller than {@code value}, in O(log n). */
    static int countBelow(double[] sorted, double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
