package studio.stancebook.activity.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Malformed;

/**
 * Which lines are asked for, as parameters of a request.
 *
 * @param person the id of who did it
 * @param kind what it was done to, such as {@code package}
 * @param subject the id or key of that
 * @param from the first day, such as {@code 2031-05-06} (UTC), or a moment, such as {@code 2031-05-06T07:08:09Z}
 * @param to the last day, included, or a moment, not included
 */
record ActivityParameters(
        @Nullable String person,
        @Nullable String kind,
        @Nullable String subject,
        @Nullable String from,
        @Nullable String to) {

    private static final int LAST_YEAR = 9999;

    /** Whether anything limits the list. */
    public boolean narrowed() {
        return Stream.of(person, kind, subject, from, to)
                .anyMatch(typed -> !text(typed).isEmpty());
    }

    /** @throws Malformed naming every parameter that cannot be read */
    ActivityFilter filter() {
        List<FieldError> errors = new ArrayList<>();
        Long who = id(errors);
        Instant first = moment("from", text(from), 0, errors);
        Instant tooLate = moment("to", text(to), 1, errors);
        if (!errors.isEmpty()) {
            throw new Malformed(errors.get(0).message(), errors);
        }
        return new ActivityFilter(who, wanted(kind), wanted(subject), first, tooLate);
    }

    private @Nullable Long id(List<FieldError> errors) {
        String typed = text(person);
        if (typed.isEmpty() || typed.matches("[0-9]{1,18}")) {
            return typed.isEmpty() ? null : Long.valueOf(typed);
        }
        errors.add(new FieldError("person", "\"" + shown(typed) + "\" is not the id of a person, which is a number."));
        return null;
    }

    private static @Nullable Instant moment(String field, String typed, int daysAfter, List<FieldError> errors) {
        if (typed.isEmpty()) {
            return null;
        }
        try {
            Instant moment = typed.length() <= 10
                    ? LocalDate.parse(typed)
                            .plusDays(daysAfter)
                            .atStartOfDay(ZoneOffset.UTC)
                            .toInstant()
                    : Instant.parse(typed);
            int year = moment.atOffset(ZoneOffset.UTC).getYear();
            if (year >= 1 && year <= LAST_YEAR) {
                return moment;
            }
        } catch (DateTimeParseException unreadable) {
            // told below
        }
        errors.add(new FieldError(
                field,
                "\"" + shown(typed)
                        + "\" is neither a day such as 2031-05-06 nor a moment such as 2031-05-06T07:08:09Z."));
        return null;
    }

    private static @Nullable String wanted(@Nullable String typed) {
        String text = text(typed).replace("\0", "\uFFFD");
        return text.isEmpty() ? null : text;
    }

    private static String text(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "").strip();
    }

    static String shown(String text) {
        String line = text.replaceAll("\\p{Cntrl}", " ");
        return line.length() <= 40 ? line : line.substring(0, 40) + "…";
    }
}
