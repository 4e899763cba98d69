package studio.stancebook.catalogue.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Malformed;
import studio.stancebook.quantity.NumberReading;

/** What packages are looked for by, as typed into the page. */
record CatalogueForm(
        @Nullable String q,
        @Nullable String segment,
        @Nullable String fromYear,
        @Nullable String toYear,
        @Nullable String origin,
        @Nullable String measure,
        @Nullable String min,
        @Nullable String max,
        @Nullable String view) {

    /** Public because the page asks. */
    public boolean pictures() {
        return "pictures".equals(view);
    }

    /** Public because the page asks. */
    public boolean byMeasure() {
        return !text(measure).isEmpty();
    }

    /** Whether anything limits the list. */
    public boolean narrowed() {
        return List.of(text(q), text(segment), text(fromYear), text(toYear), text(origin), text(measure)).stream()
                .anyMatch(typed -> !typed.isEmpty());
    }

    /** @throws Malformed naming every field that cannot be read */
    CatalogueFilter filter() {
        List<FieldError> errors = new ArrayList<>();
        Integer from = year("fromYear", fromYear, errors);
        Integer to = year("toYear", toYear, errors);
        Double least = number("min", min, errors);
        Double most = number("max", max, errors);
        if (!errors.isEmpty()) {
            throw new Malformed(errors.get(0).message(), errors);
        }
        boolean limited = byMeasure();
        return Parameters.filter(new PackageFilterParameters(
                q, segment, from, to, origin, measure, limited ? least : null, limited ? most : null));
    }

    private static @Nullable Integer year(String field, @Nullable String typed, List<FieldError> errors) {
        String text = text(typed);
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("[0-9]{1,5}")) {
            return Integer.valueOf(text);
        }
        errors.add(new FieldError(field, "\"" + Parameters.shown(text) + "\" is not a year: write four digits."));
        return null;
    }

    private static @Nullable Double number(String field, @Nullable String typed, List<FieldError> errors) {
        String text = text(typed);
        if (text.isEmpty()) {
            return null;
        }
        NumberReading reading = NumberReading.alone(text);
        if (reading.ambiguous()) {
            errors.add(new FieldError(field, String.valueOf(reading.fault())));
        } else if (reading.number() == null) {
            errors.add(new FieldError(
                    field, "\"" + Parameters.shown(text) + "\" is not a number: write one such as 3.45."));
        }
        return reading.number() == null ? null : (Double) reading.number().doubleValue();
    }

    private static String text(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "").strip();
    }
}
