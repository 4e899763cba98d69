package studio.stancebook.exchange.mapping;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.NumberReading;

/**
 * The number of a cell with the unit that is written behind it.
 *
 * @param number the number; null when the text is none
 * @param unit the unit written behind it; null when there is none
 * @param fault what keeps it from being read; null when it was
 */
record CellNumber(
        @Nullable BigDecimal number,
        @Nullable ColumnUnit unit,
        @Nullable String fault) {

    /**
     * Reads the text of a cell.
     *
     * @param plain true when a point is the decimal mark and nothing is grouped, as in the numbers of a workbook
     */
    static CellNumber of(String text, boolean plain) {
        NumberReading reading = plain ? NumberReading.ofPlain(text) : NumberReading.of(text);
        Optional<ColumnUnit> unit = ColumnUnit.ofSpelling(reading.rest());
        return reading.rest().isEmpty() || unit.isPresent()
                ? new CellNumber(reading.number(), unit.orElse(null), reading.fault())
                : new CellNumber(null, null, NumberReading.none().fault());
    }
}
