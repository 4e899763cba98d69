package studio.stancebook.catalogue.web;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.measure.Measure;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.SortedColumn;

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
        return NumberText.shown(value, measure.decimals());
    }

    /** The same, or nothing. */
    static String value(OptionalDouble value, Measure measure) {
        return value.isPresent() ? value(value.getAsDouble(), measure) : "";
    }

    /** A spread of a measure, with one decimal more than its values. */
    static String spread(OptionalDouble value, Measure measure) {
        return value.isPresent() ? NumberText.fixed(value.getAsDouble(), measure.decimals() + 1) : "";
    }

    /** The values of a measure as their reader reads them. */
    static SortedColumn asRead(SortedColumn column, Measure measure) {
        String key = measure.key();
        return LeaningAngles.turned(key)
                ? SortedColumn.of(Arrays.stream(column.toArray())
                        .map(value -> LeaningAngles.value(key, value))
                        .toArray())
                : column;
    }

    /** A recorded number, without needless zeros. */
    static String number(double value) {
        return NumberText.plain(value, 2);
    }
}
