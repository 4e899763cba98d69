package studio.stancebook.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounding as specifications ask for it. */
public final class Rounding {

    private Rounding() {}

    /**
     * The nearest whole number, halves away from zero, decided on the shortest decimal text of the value: 112.5 gives
     * 113, and a product such as 0.55 x 205 = 112.75000000000001 is not tipped by its binary error.
     *
     * @throws IllegalArgumentException if {@code value} is NaN or infinite
     */
    public static double halfUp(double value) {
        return halfUp(value, 0);
    }

    /**
     * As {@link #halfUp(double)}, to a number of decimals.
     *
     * @throws IllegalArgumentException if {@code value} is NaN or infinite
     */
    public static double halfUp(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("Only a finite number can be rounded, got " + value);
        }
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .doubleValue();
    }
}
