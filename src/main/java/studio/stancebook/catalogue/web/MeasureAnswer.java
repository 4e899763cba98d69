package studio.stancebook.catalogue.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.NotMeasurable;
import studio.stancebook.measure.Note;
import studio.stancebook.measure.Subject;

/**
 * A measure of one side view: value, standard uncertainty and notes, or why there is no value and what is missing.
 *
 * @param missing what would have to be recorded; empty when nothing would help
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record MeasureAnswer(
        @Nullable Double value,
        @Nullable Double uncertainty,
        @Nullable List<String> notes,
        @Nullable String reason,
        @Nullable List<String> missing) {

    static Map<String, MeasureAnswer> all(DimensionSet set, MeasureRegistry registry) {
        Map<String, MeasureAnswer> all = new LinkedHashMap<>();
        registry.valuesOf(new Subject(set)).forEach((measure, value) -> all.put(measure.key(), of(value)));
        return all;
    }

    private static MeasureAnswer of(MeasureValue value) {
        if (value instanceof Measured measured) {
            List<String> notes =
                    measured.notes().stream().sorted().map(Note::label).toList();
            return new MeasureAnswer(measured.value(), measured.uncertainty(), notes, null, null);
        }
        NotMeasurable not = (NotMeasurable) value;
        return new MeasureAnswer(null, null, null, not.reason(), not.missing());
    }
}
