package studio.stancebook.statistics;

import java.util.Arrays;

/**
 * Values in ascending order, in pieces of some thousand; immutable. One value more or less copies one piece and the list
 * of pieces and shares the others, so it takes about the square root of what a whole copy takes.
 */
final class Ascending {

    /** Values in a piece when it is made; a piece of twice as many is parted. */
    static final int PIECE = 1024;

    private final double[][] pieces;
    /** The index of the first value of each piece, and the number of all values. */
    private final int[] starts;

    private Ascending(double[][] pieces) {
        this.pieces = pieces;
        this.starts = new int[pieces.length + 1];
        for (int i = 0; i < pieces.length; i++) {
            starts[i + 1] = starts[i] + pieces[i].length;
        }
    }

    /** Of values that are in ascending order; the array is taken over. */
    static Ascending of(double[] sorted) {
        if (sorted.length <= 2 * PIECE) {
            return new Ascending(new double[][] {sorted});
        }
        double[][] pieces = new double[(sorted.length + PIECE - 1) / PIECE][];
        for (int i = 0; i < pieces.length; i++) {
            pieces[i] = Arrays.copyOfRange(sorted, i * PIECE, Math.min(sorted.length, (i + 1) * PIECE));
        }
        return new Ascending(pieces);
    }

    int size() {
        return starts[pieces.length];
    }

    /** The value of an index from 0, in O(log n). */
    double at(int index) {
        int piece = pieceOf(index);
        return pieces[piece][index - starts[piece]];
    }

    /** The piece that has an index; the last one for the index after the last. */
    private int pieceOf(int index) {
        if (pieces.length == 1) {
            return 0;
        }
        int low = 0;
        int high = pieces.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (starts[middle] <= index) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** How many values are smaller than {@code value}, in O(log n). */
    int countBelow(double value) {
        int low = 0;
        int high = pieces.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (pieces[middle][pieces[middle].length - 1] < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return starts[low] + Ranks.countBelow(pieces[low], value);
    }

    /** With one value more, which comes to have that index. */
    Ascending with(int index, double value) {
        int piece = pieceOf(index);
        double[] before = pieces[piece];
        int place = index - starts[piece];
        double[] longer = Arrays.copyOf(before, before.length + 1);
        System.arraycopy(before, place, longer, place + 1, before.length - place);
        longer[place] = value;
        return longer.length <= 2 * PIECE
                ? replaced(piece, longer)
                : replaced(piece, Arrays.copyOf(longer, PIECE), Arrays.copyOfRange(longer, PIECE, longer.length));
    }

    /** Less the value of an index. */
    Ascending without(int index) {
        int piece = pieceOf(index);
        double[] before = pieces[piece];
        int place = index - starts[piece];
        double[] shorter = Arrays.copyOf(before, before.length - 1);
        System.arraycopy(before, place + 1, shorter, place, shorter.length - place);
        return shorter.length > 0 || pieces.length == 1 ? replaced(piece, shorter) : replaced(piece);
    }

    private Ascending replaced(int piece, double[]... by) {
        double[][] next = new double[pieces.length - 1 + by.length][];
        System.arraycopy(pieces, 0, next, 0, piece);
        System.arraycopy(by, 0, next, piece, by.length);
        System.arraycopy(pieces, piece + 1, next, piece + by.length, pieces.length - piece - 1);
        return new Ascending(next);
    }

    /** All values, as a copy. */
    double[] toArray() {
        double[] all = new double[size()];
        for (int i = 0; i < pieces.length; i++) {
            System.arraycopy(pieces[i], 0, all, starts[i], pieces[i].length);
        }
        return all;
    }
}
