package studio.stancebook.measure.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/** Reads a studio ratio from what was sent or picked, collecting everything that is wrong with it. */
final class RatioReading {

    private final ErrorList errors = new ErrorList();

    private RatioReading() {}

    /** What a ratio can be made of. */
    static List<Reading> lengths() {
        return Arrays.stream(Reading.values())
                .filter(reading -> !reading.angle())
                .toList();
    }

    /** @throws Impossible naming every field that cannot be accepted */
    static StudioRatio read(
            @Nullable String key,
            @Nullable String name,
            @Nullable List<@Nullable String> numerator,
            @Nullable List<@Nullable String> denominator) {
        RatioReading reading = new RatioReading();
        List<Reading> over = reading.readings("numerator", numerator);
        List<Reading> under = reading.readings("denominator", denominator);
        String readKey = key == null ? "" : key.strip();
        String readName = name == null ? "" : name.strip();
        try {
            StudioRatio ratio = new StudioRatio(readKey, readName, over, under);
            if (reading.errors.isEmpty()) {
                return ratio;
            }
        } catch (Impossible impossible) {
            impossible.errors().forEach(reading::addUnlessKnown);
        }
        throw Impossible.of(reading.errors);
    }

    private void addUnlessKnown(FieldError error) {
        if (errors.listed().stream().noneMatch(known -> known.field().equals(error.field()))) {
            errors.add(error);
        }
    }

    private List<Reading> readings(String field, @Nullable List<@Nullable String> keys) {
        List<Reading> found = new ArrayList<>();
        for (String key : keys == null ? List.<String>of() : keys) {
            Reading.ofKey(String.valueOf(key))
                    .ifPresentOrElse(
                            found::add, () -> errors.add(() -> new FieldError(field, unknown(String.valueOf(key)))));
        }
        return found;
    }

    private static String unknown(String key) {
        String shown = key.length() <= 40 ? key : key.substring(0, 40) + "…";
        return "\"" + shown
                + "\" is not a length that a ratio can be made of: GET /api/v1/measures/lengths lists them.";
    }
}
