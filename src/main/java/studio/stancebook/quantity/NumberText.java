package studio.stancebook.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text: a point for the decimals, no grouping, no exponent, whatever the locale of the machine. */
public final class NumberText {

    private NumberText() {}

    /** At most {@code maxDecimals} decimals, halves up, no trailing zeros, never "-0". */
    public static String plain(double value, int maxDecimals) {
        BigDecimal rounded = rounded(value, maxDecimals).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** Exactly {@code decimals} decimals, halves up, never a negative zero. */
    public static String fixed(double value, int decimals) {
        return rounded(value, decimals).toPlainString();
    }

    /** As {@link #fixed}, with a plus sign before a positive number. */
    public static String signed(double value, int decimals) {
        BigDecimal rounded = rounded(value, decimals);
        return (rounded.signum() > 0 ? "+" : "") + rounded.toPlainString();
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
