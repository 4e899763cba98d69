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

    /** As {@link #fixed}, for people: with a minus sign that is as wide as a figure. */
    public static String shown(double value, int decimals) {
        return fixed(value, decimals).replace('-', '\u2212');
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

    private static final double[] POWERS = {1, 10, 100, 1000};
    private static final double MOST_QUICK = 1e9;

    /** A value closer than this to half a unit is rounded by its decimal text. */
    private static final double NEARLY_HALF = 1e-6;

    private static BigDecimal rounded(double value, int decimals) {
        if (decimals >= 0 && decimals < POWERS.length && Math.abs(value) < MOST_QUICK) {
            double units = Math.abs(value) * POWERS[decimals];
            if (Math.abs(units - Math.floor(units) - 0.5) > NEARLY_HALF) {
                long whole = (long) Math.floor(units + 0.5);
                return BigDecimal.valueOf(value < 0 ? -whole : whole, decimals);
            }
        }
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
