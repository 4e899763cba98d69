package studio.stancebook.exchange.mapping;

import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import studio.stancebook.exchange.table.TableRow;

/**
 * What one row gives.
 *
 * @param row its number
 * @param draft the package; null when an error keeps the row out
 * @param problems errors and queries so far
 * @param columnOf the column of a field, by the field's name, as problems name it
 * @param source the row of the table; null where the file is none
 */
public record RowReading(
        long row,
        @Nullable RowDraft draft,
        Problems problems,
        UnaryOperator<String> columnOf,
        @Nullable TableRow source) {

    /** How much there is to hold: 1, and 1 for every hundred points. */
    public int weight() {
        return draft == null
                ? 1
                : 1
                        + draft.dimensions().polylines().values().stream()
                                .mapToInt(points -> points.size() / 100)
                                .sum();
    }
}
