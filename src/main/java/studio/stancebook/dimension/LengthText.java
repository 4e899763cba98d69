package studio.stancebook.dimension;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as people type them: a decimal point or comma, and an optional unit behind. */
public final class LengthText {

    /** Exact by definition (international inch). */
    public static final double MM_PER_INCH = 25.4;

    private static final Pattern NUMBER =
            Pattern.compile("([+-]?(?:\\d{1,9}(?:[.,]\\d{1,12})?|[.,]\\d{1,12}))\\s*(mm|cm|m|in|inch|\"|″|°|deg|kg)?");

    private LengthText() {}

    /**
     * The value in mm (or degrees, or kg) of a text such as {@code 2850}, {@code 2850,5 mm}, {@code 112.2 in} or {@code
     * 28°}; empty when it is none. A number alone counts in {@code bareUnit}.
     */
    public static OptionalDouble parse(String text, String bareUnit) {
        Matcher matcher = NUMBER.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
        String unit = matcher.group(2) == null ? bareUnit : matcher.group(2);
        return OptionalDouble.of(toMillimetres(number, unit));
    }

    private static double toMillimetres(double number, String unit) {
        return switch (unit) {
            case "in", "inch", "\"", "″" -> number * MM_PER_INCH;
            case "cm" -> number * 10;
            case "m" -> number * 1000;
            default -> number;
        };
    }
}
