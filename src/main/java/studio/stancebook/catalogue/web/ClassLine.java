package studio.stancebook.catalogue.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.measure.Measure;
import studio.stancebook.statistics.ClassSize;
import studio.stancebook.statistics.QuantileType;
import studio.stancebook.statistics.SortedColumn;
import studio.stancebook.statistics.Summary;

/**
 * One measure of a class as the page of its segment shows it; texts, empty where there is no figure.
 *
 * @param unit symbol; empty for a ratio
 * @param picture null when no package has the measure
 */
record ClassLine(
        String key,
        String name,
        String definition,
        String unit,
        int n,
        @Nullable SpreadPicture picture,
        String mean,
        String sd,
        String min,
        String p5,
        String p10,
        String p25,
        String median,
        String p75,
        String p90,
        String p95,
        String max,
        String iqr,
        String mad) {

    static ClassLine of(Measure measure, ClassSnapshot snapshot, QuantileType type) {
        SortedColumn column = Formats.asRead(snapshot.column(measure.key()), measure);
        Summary summary = Summary.of(column, type);
        return new ClassLine(
                measure.key(),
                LeaningAngles.words(measure.key(), measure.name()),
                LeaningAngles.words(measure.key(), measure.definition()),
                measure.unit().symbol(),
                summary.n(),
                SpreadPicture.of(column, type),
                Formats.value(summary.mean(), measure),
                Formats.spread(summary.standardDeviation(), measure),
                Formats.value(summary.min(), measure),
                Formats.value(summary.p5(), measure),
                Formats.value(summary.p10(), measure),
                Formats.value(summary.p25(), measure),
                Formats.value(summary.median(), measure),
                Formats.value(summary.p75(), measure),
                Formats.value(summary.p90(), measure),
                Formats.value(summary.p95(), measure),
                Formats.value(summary.max(), measure),
                Formats.spread(summary.interquartileRange(), measure),
                Formats.spread(summary.medianAbsoluteDeviation(), measure));
    }

    /** Whether any package has the measure; public because the page asks. */
    public boolean any() {
        return n > 0;
    }

    /** Whether the class is too small to lean on; public because the page asks. */
    public boolean small() {
        return any() && ClassSize.of(n) != ClassSize.SUFFICIENT;
    }
}
