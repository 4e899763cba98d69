package studio.stancebook.exchange.exporting;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.exchange.mapping.PointCells;
import studio.stancebook.exchange.table.TableLimits;
import studio.stancebook.geometry.Point;

/** A polyline as text for one cell, or for several where it is too long for one. */
final class PolylineCells {

    /** Room for the apostrophe before a negative number. */
    private static final int MOST = TableLimits.MOST_CHARACTERS_IN_CELL - 1;

    private PolylineCells() {}

    static List<String> of(List<Point> points) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        for (Point point : points) {
            String text = PointCells.of(point);
            if (cell.length() + 2 + text.length() > MOST) {
                cells.add(cell.toString());
                cell.setLength(0);
            }
            cell.append(cell.isEmpty() ? "" : "; ").append(text);
        }
        if (!cell.isEmpty()) {
            cells.add(cell.toString());
        }
        return cells;
    }
}
