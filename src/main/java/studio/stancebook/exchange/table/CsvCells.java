package studio.stancebook.exchange.table;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects the cells of one record and stops at the limits; records are counted as rows, the heading being row 1. */
final class CsvCells extends AbstractBaseCsvCallbackHandler<List<Cell>> {

    private List<Cell> cells = new ArrayList<>();
    private int characters;
    private long row;

    /** The number of the record that was read last. */
    long row() {
        return row;
    }

    @Override
    protected void handleBegin(long startingLineNumber) {
        cells = new ArrayList<>();
        characters = 0;
        row++;
    }

    @Override
    protected void handleField(int fieldIdx, char[] buf, int offset, int len, boolean quoted) {
        characters += len;
        if (row > TableLimits.MOST_ROWS + 1L) { // not at the beginning of a record, which the end of the text has too
            throw TableLimits.tooManyRows();
        }
        if (len > TableLimits.MOST_CHARACTERS_IN_CELL) {
            throw TableLimits.cellTooLong(row);
        }
        if (characters > TableLimits.MOST_CHARACTERS_IN_ROW) {
            throw TableLimits.rowTooLong(row);
        }
        if (fieldIdx >= TableLimits.MOST_COLUMNS) {
            throw TableLimits.tooManyColumns(row);
        }
        cells.add(Cell.ofText(new String(buf, offset, len)));
    }

    @Override
    protected @Nullable List<Cell> buildRecord() {
        return cells;
    }
}
