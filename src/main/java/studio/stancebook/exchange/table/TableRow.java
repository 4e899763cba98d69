package studio.stancebook.exchange.table;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row below the heading.
 *
 * @param number as a person counts rows in the file: the heading is row 1, empty rows count
 * @param cells from the first column on; may end before the last
 * @param fault why the row as a whole cannot be read, such as more cells than the heading; null when it can
 */
public record TableRow(
        long number, List<Cell> cells, @Nullable String fault) {

    public TableRow {
        cells = List.copyOf(cells);
    }

    /** The cell of a column, counted from 0; empty beyond the last. */
    public Cell cell(int column) {
        return column < cells.size() ? cells.get(column) : Cell.EMPTY;
    }

    boolean blank() {
        return cells.stream().allMatch(Cell::blank);
    }
}
