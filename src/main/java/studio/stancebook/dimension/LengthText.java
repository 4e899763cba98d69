package studio.stancebook.dimension;

import java.math.BigDecimal;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.NumberReading;

/** Numbers as people type them into forms: as {@link NumberReading} reads them, with an optional unit behind. */
public final class LengthText {

    /** Exact by definition (international inch). */
    public static final double MM_PER_INCH = 25.4;

    private LengthText() {}

    /**
     * The value in mm (or degrees, or kg) of a text such as {@code 2850}, {@code 2850,5 mm}, {@code 112.2 in} or {@code
     * 28°}; a reading without a number when it is none. A number alone counts in {@code bareUnit}.
     */
    public static NumberReading parse(String text, String bareUnit) {
        NumberReading reading = NumberReading.of(text);
        BigDecimal number = reading.number();
        if (number == null) {
            return reading;
        }
        String unit = reading.rest().isEmpty() ? bareUnit : reading.rest().toLowerCase(Locale.ROOT);
        BigDecimal factor = factor(unit);
        return factor == null ? NumberReading.none() : new NumberReading(number.multiply(factor), "", null, false);
    }

    private static @Nullable BigDecimal factor(String unit) {
        return switch (unit) {
            case "in", "inch", "\"", "″" -> BigDecimal.valueOf(MM_PER_INCH);
            case "cm" -> BigDecimal.TEN;
            case "m" -> BigDecimal.valueOf(1000);
            case "", "mm", "°", "deg", "kg" -> BigDecimal.ONE;
            default -> null;
        };
    }
}
