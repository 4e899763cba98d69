package studio.stancebook.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A number as people write it, on forms, in API text and in tables alike: point or comma for the decimals, groups of
 * three, and whatever stands behind it. A comma before exactly three digits is a thousands mark in some countries and the
 * decimal mark in others; such a text is refused with both readings.
 *
 * @param number the number; null when the text is none or can be read in two ways
 * @param rest what is written behind the number, such as a unit; empty when there is nothing
 * @param fault a sentence about what keeps the text from being read; null when it was read
 * @param ambiguous true when the text can be read in two ways
 */
public record NumberReading(
        @Nullable BigDecimal number, String rest, @Nullable String fault, boolean ambiguous) {

    private static final Pattern NUMBER_AND_REST = Pattern.compile("([+-]?[0-9.,' \u00a0\u2009\u202f]*[0-9])(.*)");
    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d{1,15}([.,]\\d{1,40})?|[.,]\\d{1,40})");
    private static final Pattern GROUPED =
            Pattern.compile("[+-]?\\d{1,3}(?:([.,' ])\\d{3})(?:\\1\\d{3}){0,3}(?:(?!\\1)[.,]\\d{1,40})?");
    private static final Pattern EITHER = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

    private static final int LONGEST = 60;
    private static final NumberReading NONE = new NumberReading(null, "", "It is no number.", false);

    /** Reads a text in which a comma may stand for thousands or for decimals. */
    public static NumberReading of(String text) {
        return read(text, false);
    }

    /** Reads a text in which a point is the decimal mark and nothing is grouped, as in the numbers of a workbook. */
    public static NumberReading ofPlain(String text) {
        return read(text, true);
    }

    /** Reads a text that is a number and nothing else: one with something behind it is none. */
    public static NumberReading alone(String text) {
        NumberReading reading = of(text);
        return reading.rest().isEmpty() ? reading : NONE;
    }

    /** The text is none. */
    public static NumberReading none() {
        return NONE;
    }

    private static NumberReading read(String text, boolean plain) {
        String stripped = text.strip().replace('\u2212', '-');
        Matcher parts = NUMBER_AND_REST.matcher(stripped);
        if (stripped.length() > LONGEST || !parts.matches()) {
            return NONE;
        }
        return digits(withPlainBlanks(parts.group(1)).strip(), parts.group(2).strip(), plain);
    }

    private static String withPlainBlanks(String text) {
        return text.replace('\u00a0', ' ').replace('\u2009', ' ').replace('\u202f', ' ');
    }

    private static NumberReading digits(String digits, String rest, boolean plain) {
        if (!plain && EITHER.matcher(digits).matches()) {
            return new NumberReading(null, rest, twoReadings(digits), true);
        }
        if (PLAIN.matcher(digits).matches()) {
            return new NumberReading(new BigDecimal(digits.replace(',', '.')), rest, null, false);
        }
        Matcher grouped = GROUPED.matcher(digits);
        return !plain && grouped.matches()
                ? new NumberReading(new BigDecimal(ungrouped(digits, grouped.group(1))), rest, null, false)
                : NONE;
    }

    private static String twoReadings(String digits) {
        String thousands = digits.replace(",", "");
        String decimals =
                new BigDecimal(digits.replace(',', '.')).stripTrailingZeros().toPlainString();
        return digits + " could be " + decimals + " or " + thousands + ": write " + thousands + " or " + decimals + ".";
    }

    private static String ungrouped(String digits, String groupMark) {
        return digits.replace(groupMark, "").replace(',', '.');
    }
}
