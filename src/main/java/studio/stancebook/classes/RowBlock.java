package studio.stancebook.classes;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Some packages of a class in ascending order of their ids, column by column in primitive arrays; immutable. A column
 * without any value takes no room.
 */
public final class RowBlock {

    private final long[] ids;
    private final short[] years;
    private final byte[] origins;
    private final byte[] names;
    private final int[] nameEnds;
    private final double[] @Nullable [] columns;

    private RowBlock(List<ClassRow> rows, int measures) {
        int n = rows.size();
        ids = new long[n];
        years = new short[n];
        origins = new byte[n];
        nameEnds = new int[n];
        byte[][] texts = new byte[n][];
        int length = 0;
        for (int i = 0; i < n; i++) {
            ClassRow row = rows.get(i);
            ids[i] = row.id();
            years[i] = (short) row.modelYear();
            origins[i] = (byte) row.origin();
            texts[i] = row.name().getBytes(StandardCharsets.UTF_8);
            length += texts[i].length;
            nameEnds[i] = length;
        }
        names = joined(texts, length);
        columns = new double[measures][];
        for (int m = 0; m < measures; m++) {
            columns[m] = column(rows, m);
        }
    }

    public static RowBlock of(List<ClassRow> rows, int measures) {
        return new RowBlock(rows, measures);
    }

    private static byte[] joined(byte[][] texts, int length) {
        byte[] all = new byte[length];
        int at = 0;
        for (byte[] text : texts) {
            System.arraycopy(text, 0, all, at, text.length);
            at += text.length;
        }
        return all;
    }

    private static double @Nullable [] column(List<ClassRow> rows, int measure) {
        double[] column = null;
        for (int i = 0; i < rows.size(); i++) {
            double value = rows.get(i).values()[measure];
            if (!Double.isNaN(value)) {
                column = column == null ? missing(rows.size()) : column;
                column[i] = value;
            }
        }
        return column;
    }

    private static double[] missing(int n) {
        double[] column = new double[n];
        Arrays.fill(column, Double.NaN);
        return column;
    }

    public int size() {
        return ids.length;
    }

    public long id(int row) {
        return ids[row];
    }

    /** Where the row of an id is; negative if it is not here. */
    int place(long id) {
        return Arrays.binarySearch(ids, id);
    }

    public int modelYear(int row) {
        return years[row];
    }

    public int origin(int row) {
        return origins[row];
    }

    public String name(int row) {
        return new String(names, start(row), nameEnds[row] - start(row), StandardCharsets.UTF_8);
    }

    /** Compares names by their bytes in UTF-8, which have the order of the characters. */
    public int compareName(int row, RowBlock other, int otherRow) {
        return Arrays.compareUnsigned(
                names, start(row), nameEnds[row], other.names, other.start(otherRow), other.nameEnds[otherRow]);
    }

    private int start(int row) {
        return row == 0 ? 0 : nameEnds[row - 1];
    }

    public double value(int row, int measure) {
        double[] column = columns[measure];
        return column == null ? Double.NaN : column[row];
    }

    ClassRow row(int row) {
        double[] values = new double[columns.length];
        for (int m = 0; m < values.length; m++) {
            values[m] = value(row, m);
        }
        return new ClassRow(ids[row], name(row), years[row], origins[row], values);
    }
}
