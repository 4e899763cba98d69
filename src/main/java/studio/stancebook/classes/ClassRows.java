package studio.stancebook.classes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The packages of a class in ascending order of their ids, in blocks; immutable. A change copies the blocks it touches and
 * shares the others.
 */
public final class ClassRows {

    /** Small enough to be copied for one edit in far less than a millisecond, large enough to waste no memory. */
    static final int MOST_IN_BLOCK = 512;

    private final int measures;
    private final List<RowBlock> blocks;
    private final int size;

    private ClassRows(int measures, List<RowBlock> blocks) {
        this.measures = measures;
        this.blocks = blocks;
        this.size = blocks.stream().mapToInt(RowBlock::size).sum();
    }

    /** No rows of so many measures. */
    static ClassRows none(int measures) {
        return new ClassRows(measures, List.of());
    }

    /** How many packages. */
    public int size() {
        return size;
    }

    /** What is done with each row. */
    @FunctionalInterface
    public interface RowVisitor {

        void read(RowBlock block, int row);
    }

    /** Reads the rows one by one. */
    public void forEach(RowVisitor reader) {
        for (RowBlock block : blocks) {
            for (int row = 0; row < block.size(); row++) {
                reader.read(block, row);
            }
        }
    }

    /** Reads those of the rows that have one of these ids. */
    public void forEach(Collection<Long> ids, RowVisitor reader) {
        for (long id : ids) {
            int at = blockOf(id);
            int row = at < 0 ? -1 : blocks.get(at).place(id);
            if (row >= 0) {
                reader.read(blocks.get(at), row);
            }
        }
    }

    /** Whether there is a row of an id. */
    public boolean has(long id) {
        int at = blockOf(id);
        return at >= 0 && blocks.get(at).place(id) >= 0;
    }

    /** The last block that does not begin after an id; -1 if there is none. */
    private int blockOf(long id) {
        int low = 0;
        int high = blocks.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (blocks.get(middle).id(0) <= id) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }

    /** Every value of a measure that is there, in no order that means anything. */
    public double[] values(int measure) {
        double[] values = new double[size];
        int n = 0;
        for (RowBlock block : blocks) {
            for (int row = 0; row < block.size(); row++) {
                double value = block.value(row, measure);
                if (!Double.isNaN(value)) {
                    values[n++] = value;
                }
            }
        }
        return Arrays.copyOf(values, n);
    }

    /** The rows that a filter takes. */
    public ClassRows only(ClassFilter filter) {
        List<RowBlock> taken = new ArrayList<>();
        for (RowBlock block : blocks) {
            List<ClassRow> rows = new ArrayList<>();
            for (int row = 0; row < block.size(); row++) {
                if (filter.takes(block.modelYear(row), block.origin(row))) {
                    rows.add(block.row(row));
                }
            }
            addBlocks(rows, taken);
        }
        return new ClassRows(measures, List.copyOf(taken));
    }

    /** These rows and others that were added. */
    public ClassRows with(List<ClassRow> added, ClassUpdate update) {
        return changed(ClassChange.rows(added), update);
    }

    /** These rows after a change; {@code seen} is told of every row that goes and every row that comes. */
    ClassRows changed(ClassChange change, Seen seen) {
        List<RowBlock> next = new ArrayList<>(blocks.size() + 1);
        for (int i = 0; i < Math.max(1, blocks.size()); i++) {
            RowBlock block = blocks.isEmpty() ? null : blocks.get(i);
            ClassChange part =
                    change.before(i + 1 < blocks.size() ? blocks.get(i + 1).id(0) : Long.MAX_VALUE);
            if (part.isEmpty() && block != null) {
                next.add(block);
            } else {
                addBlocks(merged(block, part, seen), next);
            }
            change = change.after(part);
        }
        return new ClassRows(measures, List.copyOf(next));
    }

    /** Told of rows that go and come. */
    interface Seen {

        void gone(ClassRow row);

        void come(ClassRow row);
    }

    private static List<ClassRow> merged(@Nullable RowBlock block, ClassChange part, Seen seen) {
        TreeMap<Long, ClassRow> rows = new TreeMap<>();
        for (int row = 0; block != null && row < block.size(); row++) {
            if (part.concerns(block.id(row))) {
                seen.gone(block.row(row));
            } else {
                rows.put(block.id(row), block.row(row));
            }
        }
        part.rows().values().forEach(row -> {
            rows.put(row.id(), row);
            seen.come(row);
        });
        return new ArrayList<>(rows.values());
    }

    private void addBlocks(List<ClassRow> rows, List<RowBlock> to) {
        for (int from = 0; from < rows.size(); from += MOST_IN_BLOCK) {
            to.add(RowBlock.of(rows.subList(from, Math.min(rows.size(), from + MOST_IN_BLOCK)), measures));
        }
    }
}
