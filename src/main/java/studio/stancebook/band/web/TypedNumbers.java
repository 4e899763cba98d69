package studio.stancebook.band.web;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.FieldError;
import studio.stancebook.quantity.NumberReading;
import studio.stancebook.quantity.NumberText;

/** Numbers of a form: reads them, collecting what cannot be read, and writes them. */
final class TypedNumbers {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int DECIMALS = 12;

    private final List<FieldError> errors;

    TypedNumbers(List<FieldError> errors) {
        this.errors = errors;
    }

    static String text(@Nullable Number number) {
        return number == null ? "" : NumberText.plain(number.doubleValue(), DECIMALS);
    }

    static String percent(@Nullable Double share) {
        return share == null
                ? ""
                : BigDecimal.valueOf(share)
                        .multiply(HUNDRED)
                        .stripTrailingZeros()
                        .toPlainString();
    }

    /** Null when nothing is typed. */
    @Nullable
    Double number(String field, @Nullable String typed) {
        BigDecimal read = read(field, typed);
        return read == null ? null : (Double) read.doubleValue();
    }

    /** A share typed in percent. */
    @Nullable
    Double share(String field, @Nullable String typed) {
        BigDecimal read = read(field, typed == null ? null : typed.replace("%", ""));
        return read == null ? null : (Double) read.divide(HUNDRED).doubleValue();
    }

    @Nullable
    Integer whole(String field, @Nullable String typed) {
        BigDecimal read = read(field, typed);
        if (read != null && read.stripTrailingZeros().scale() > 0) {
            errors.add(new FieldError(field, "\"" + shown(typed) + "\" is not a whole number."));
            return null;
        }
        return read == null ? null : (Integer) read.intValue();
    }

    private @Nullable BigDecimal read(String field, @Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        NumberReading reading = NumberReading.alone(typed);
        if (reading.ambiguous()) {
            errors.add(new FieldError(field, String.valueOf(reading.fault())));
        } else if (reading.number() == null) {
            errors.add(new FieldError(field, "\"" + shown(typed) + "\" is not a number; write one such as 3.4."));
        }
        return reading.number();
    }

    private static String shown(@Nullable String typed) {
        String text = String.valueOf(typed);
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
