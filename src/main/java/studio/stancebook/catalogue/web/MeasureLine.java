package studio.stancebook.catalogue.web;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.NotMeasurable;
import studio.stancebook.measure.Note;
import studio.stancebook.statistics.QuantileType;
import studio.stancebook.statistics.SortedColumn;

/**
 * One measure of a package as its page shows it; texts, empty where there is nothing to say.
 *
 * @param unit symbol; empty for a ratio
 * @param note what must be said beside the value, or why there is none
 * @param below how many of the class have a smaller value
 * @param n how many of the class have a value
 * @param picture null when nothing of the class has a value
 */
record MeasureLine(
        String key,
        String name,
        String definition,
        boolean measured,
        String value,
        String unit,
        String uncertainty,
        String note,
        int below,
        int n,
        @Nullable SpreadPicture picture,
        boolean apart) {

    static MeasureLine of(Measure measure, MeasureValue value, ClassSnapshot snapshot, boolean apart) {
        SortedColumn column = Formats.asRead(snapshot.column(measure.key()), measure);
        return value instanceof Measured measured
                ? measured(measure, measured, column, apart)
                : missing(measure, (NotMeasurable) value, column, apart);
    }

    private static MeasureLine measured(Measure measure, Measured value, SortedColumn column, boolean apart) {
        double read = LeaningAngles.value(measure.key(), value.value());
        return new MeasureLine(
                measure.key(),
                LeaningAngles.words(measure.key(), measure.name()),
                LeaningAngles.words(measure.key(), measure.definition()),
                true,
                Formats.value(read, measure),
                measure.unit().symbol(),
                Formats.spread(OptionalDouble.of(value.uncertainty()), measure),
                notes(value),
                column.countBelow(read),
                column.n(),
                SpreadPicture.of(column, QuantileType.TYPE_7, OptionalDouble.of(read)),
                apart);
    }

    private static String notes(Measured value) {
        List<String> notes = value.notes().stream().sorted().map(Note::label).toList();
        return notes.stream().collect(Collectors.joining("; "));
    }

    private static MeasureLine missing(Measure measure, NotMeasurable value, SortedColumn column, boolean apart) {
        return new MeasureLine(
                measure.key(),
                LeaningAngles.words(measure.key(), measure.name()),
                LeaningAngles.words(measure.key(), measure.definition()),
                false,
                "",
                "",
                "",
                value.reason(),
                0,
                column.n(),
                null,
                apart);
    }

    /** Whether there is a class to stand in; public because the page asks. */
    public boolean placed() {
        return measured && n > 0;
    }
}
