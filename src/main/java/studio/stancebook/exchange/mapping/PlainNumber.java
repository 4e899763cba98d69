package studio.stancebook.exchange.mapping;

import java.math.BigDecimal;

/** Numbers as text that gives the same double back: no exponent, no grouping, a point for the decimals. */
public final class PlainNumber {

    private PlainNumber() {}

    /** The shortest decimal that rounds to {@code value}, which must be finite; a negative zero as 0. */
    public static String of(double value) {
        return value == 0
                ? "0"
                : new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
