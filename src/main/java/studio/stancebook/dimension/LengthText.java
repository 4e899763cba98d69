package studio.stancebook.dimension;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.NumberReading;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.Rounding;

/** Numbers as people type them into forms: as {@link NumberReading} reads them, with an optional unit behind. */
public final class LengthText {

    private static final BigDecimal MM_PER_INCH = BigDecimal.valueOf(LengthUnit.MM_PER_INCH);

    /** As many decimals of a value typed into a form are kept. */
    public static final int KEPT_DECIMALS = 9;

    private static final int LONGEST_DECIMALS = 12;
    private static final int ROUNDED_DECIMALS = 5;
    private static final int MICROMETRES = 3;

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
        if (unit.equals("in") || unit.equals("inch") || unit.equals("\"") || unit.equals("″")) {
            return new NumberReading(ofInches(number), "", null, false);
        }
        BigDecimal factor = factor(unit);
        return factor == null ? NumberReading.none() : new NumberReading(number.multiply(factor), "", null, false);
    }

    /** As {@link #parse} keeps it in a form: without what only the arithmetic adds. */
    public static double kept(BigDecimal number) {
        return Rounding.halfUp(number.doubleValue(), KEPT_DECIMALS);
    }

    /**
     * A length of a form in inches: the shortest text that is read back as this length. One recorded in mm has no short text in
     * inches, 2850 mm are 112.2047244... in: it is written to five decimals, and {@link #ofInches} knows it again.
     */
    public static String inInches(double mm) {
        String text = "";
        for (int decimals = 0; decimals <= LONGEST_DECIMALS; decimals++) {
            text = NumberText.fixed(mm / LengthUnit.MM_PER_INCH, decimals);
            if (kept(ofInches(new BigDecimal(text))) == mm) {
                return text;
            }
        }
        return text;
    }

    /** Exact, but for a number of five decimals that a whole micrometre was rounded to: it is that (studio decision 0102). */
    private static BigDecimal ofInches(BigDecimal inches) {
        BigDecimal exact = inches.multiply(MM_PER_INCH);
        BigDecimal micrometre = exact.setScale(MICROMETRES, RoundingMode.HALF_UP);
        boolean rounded = inches.scale() == ROUNDED_DECIMALS
                && micrometre
                                .divide(MM_PER_INCH, ROUNDED_DECIMALS, RoundingMode.HALF_UP)
                                .compareTo(inches)
                        == 0;
        return rounded ? micrometre : exact;
    }

    private static @Nullable BigDecimal factor(String unit) {
        return switch (unit) {
            case "cm" -> BigDecimal.TEN;
            case "m" -> BigDecimal.valueOf(1000);
            case "", "mm", "°", "deg", "kg" -> BigDecimal.ONE;
            default -> null;
        };
    }
}
