package studio.stancebook.catalogue;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.Malformed;
import studio.stancebook.quantity.Interval;

/**
 * What packages are asked for by the parameters of a request.
 *
 * @param q part of the name
 * @param measure the key of a measure that has to be known
 * @param min least value of the measure
 * @param max most value of the measure
 */
public record PackageListParameters(
        @Nullable String q,
        @Nullable String segment,
        @Nullable Integer fromYear,
        @Nullable Integer toYear,
        @Nullable String origin,
        @Nullable String measure,
        @Nullable Double min,
        @Nullable Double max) {

    /** @throws Malformed naming the parameter that cannot be, and what is accepted */
    public CatalogueFilter filter() {
        if (fromYear != null && toYear != null && fromYear > toYear) {
            throw Malformed.ofField(
                    "fromYear", "The years run from " + fromYear + " to " + toYear + ": the first must not be later.");
        }
        return new CatalogueFilter(
                textOf(q),
                textOf(segment).isEmpty() ? null : textOf(segment),
                fromYear,
                toYear,
                textOf(origin).isEmpty() ? null : originOf(textOf(origin)),
                range());
    }

    private @Nullable MeasureRange range() {
        if (textOf(measure).isEmpty()) {
            if (min != null || max != null) {
                throw Malformed.ofField("measure", "The limits min and max need the measure that they are for.");
            }
            return null;
        }
        double least = limit("min", min, Double.NEGATIVE_INFINITY);
        double most = limit("max", max, Double.POSITIVE_INFINITY);
        if (least > most) {
            throw Malformed.ofField("min", "min is " + least + " and max " + most + ": min must not be above max.");
        }
        return new MeasureRange(textOf(measure), new Interval(least, most));
    }

    private static double limit(String field, @Nullable Double value, double none) {
        if (value != null && !Double.isFinite(value)) {
            throw Malformed.ofField(field, field + " is a number, not " + value + ".");
        }
        return value == null ? none : value;
    }

    private static Origin originOf(String key) {
        String known = Arrays.stream(Origin.values()).map(Origin::key).collect(Collectors.joining(", "));
        return Origin.ofKey(key)
                .orElseThrow(() -> Malformed.ofField(
                        "origin",
                        "\"" + CatalogueRules.shortened(key) + "\" is no origin: it is one of " + known + "."));
    }

    private static String textOf(@Nullable String text) {
        return text == null ? "" : text.strip();
    }
}
