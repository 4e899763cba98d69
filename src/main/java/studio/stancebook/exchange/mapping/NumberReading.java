package studio.stancebook.exchange.mapping;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A number as people write it in tables: point or comma for the decimals, groups of three, an own unit behind it.
 *
 * @param number the number; null when the text is none
 * @param unit the unit written behind it; null when there is none
 * @param fault what keeps it from being read; null when it was
 */
record NumberReading(
        @Nullable BigDecimal number,
        @Nullable ColumnUnit unit,
        @Nullable String fault) {

    private static final Pattern NUMBER_AND_REST = Pattern.compile("([+-]?[0-9.,' \u00a0\u2009\u202f]*[0-9])(.*)");
    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d{1,15}([.,]\\d{1,40})?|[.,]\\d{1,40})");
    private static final Pattern GROUPED =
            Pattern.compile("[+-]?\\d{1,3}(?:([.,' ])\\d{3})(?:\\1\\d{3}){0,3}(?:(?!\\1)[.,]\\d{1,40})?");
    /** A comma and three digits: a thousand and something in some countries, one and something in others. */
    private static final Pattern EITHER = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

    private static final int LONGEST = 60;

    /**
     * Reads the text of a cell.
     *
     * @param certain true when a comma cannot occur and a point is the decimal mark, as in the numbers of a workbook
     */
    static NumberReading of(String text, boolean certain) {
        String stripped = text.strip().replace('\u2212', '-');
        Matcher parts = NUMBER_AND_REST.matcher(stripped);
        if (stripped.length() > LONGEST || !parts.matches()) {
            return none();
        }
        String rest = parts.group(2).strip();
        Optional<ColumnUnit> unit = ColumnUnit.ofSpelling(rest);
        if (!rest.isEmpty() && unit.isEmpty()) {
            return none();
        }
        return digits(withPlainBlanks(parts.group(1)).strip(), unit.orElse(null), certain);
    }

    private static String withPlainBlanks(String text) {
        return text.replace('\u00a0', ' ').replace('\u2009', ' ').replace('\u202f', ' ');
    }

    private static NumberReading digits(String digits, @Nullable ColumnUnit unit, boolean certain) {
        if (!certain && EITHER.matcher(digits).matches()) {
            return new NumberReading(
                    null,
                    null,
                    "It can be read as " + digits.replace(",", "") + " or as " + digits.replace(',', '.')
                            + "; write it without a thousands mark.");
        }
        if (PLAIN.matcher(digits).matches()) {
            return new NumberReading(new BigDecimal(digits.replace(',', '.')), unit, null);
        }
        Matcher grouped = GROUPED.matcher(digits);
        return !certain && grouped.matches()
                ? new NumberReading(new BigDecimal(ungrouped(digits, grouped.group(1))), unit, null)
                : none();
    }

    private static String ungrouped(String digits, String groupMark) {
        return digits.replace(groupMark, "").replace(',', '.');
    }

    private static NumberReading none() {
        return new NumberReading(null, null, "It is no number.");
    }
}
