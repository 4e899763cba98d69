package studio.stancebook.catalogue.web;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalDouble;
import studio.stancebook.measure.Measure;
import studio.stancebook.quantity.NumberText;

/** Numbers and times as pages write them. */
final class Formats {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);

    private Formats() {}

    /** Date and time of day, UTC. */
    static String time(Instant instant) {
        return TIME.format(instant);
    }

    /** A value of a measure with as many decimals as the measure shows, without its unit. */
    static String value(double value, Measure measure) {
        return NumberText.fixed(value, measure.decimals());
    }

    /** The same, or nothing. */
    static String value(OptionalDouble value, Measure measure) {
        return value.isPresent() ? value(value.getAsDouble(), measure) : "";
    }

    /** A spread of a measure, with one decimal more than its values. */
    static String spread(OptionalDouble value, Measure measure) {
        return value.isPresent() ? NumberText.fixed(value.getAsDouble(), measure.decimals() + 1) : "";
    }

    /** A recorded number, without needless zeros. */
    static String number(double value) {
        return NumberText.plain(value, 2);
    }
}
