package studio.stancebook.classes;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.statistics.SortedColumn;

/**
 * The values that went and came while a class was brought up to date, so that columns that are sorted already need not be
 * sorted again.
 */
public final class ClassUpdate implements ClassRows.Seen {

    /** With more changes than this a column is sorted anew when it is asked for. */
    private static final int MOST = 32;

    private final List<double[]> gone = new ArrayList<>();
    private final List<double[]> come = new ArrayList<>();
    private int changes;

    /** Somebody who does not want to know. */
    static ClassRows.Seen unseen() {
        ClassUpdate update = new ClassUpdate();
        update.changes = MOST + 1;
        return update;
    }

    @Override
    public void gone(ClassRow row) {
        note(row, gone);
    }

    @Override
    public void come(ClassRow row) {
        note(row, come);
    }

    private void note(ClassRow row, List<double[]> list) {
        changes++;
        if (changes <= MOST) {
            list.add(row.values());
        } else {
            gone.clear();
            come.clear();
        }
    }

    /** The column after the update; null when it has to be sorted anew. */
    public @Nullable SortedColumn updated(SortedColumn before, int measure) {
        if (changes > MOST) {
            return null;
        }
        SortedColumn column = before;
        for (int i = 0; i < Math.max(gone.size(), come.size()); i++) {
            double out = i < gone.size() ? gone.get(i)[measure] : Double.NaN;
            double in = i < come.size() ? come.get(i)[measure] : Double.NaN;
            column = out == in ? column : exchanged(column, out, in);
        }
        return column;
    }

    private static SortedColumn exchanged(SortedColumn column, double out, double in) {
        if (Double.isNaN(out)) {
            return Double.isNaN(in) ? column : column.with(in);
        }
        return Double.isNaN(in) ? column.without(out) : column.exchanged(out, in);
    }
}
