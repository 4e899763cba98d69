package studio.stancebook.band.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.BandRange;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.strip.StripReading;
import studio.stancebook.drawing.strip.StripTick;
import studio.stancebook.drawing.strip.StripVerdict;
import studio.stancebook.measure.Measure;
import studio.stancebook.statistics.SortedColumn;

/** A class and a band as a strip without a proposal. */
final class ClassStrips {

    private ClassStrips() {}

    /** Ticks without names. */
    static BandStrip plain(String id, Measure measure, ClassSnapshot snapshot, @Nullable BandRange range) {
        SortedColumn column = snapshot.column(measure.key());
        return BandStrip.of(
                reading(id, measure, column, range).ticks(column.toArray()).build());
    }

    /** Ticks that name their package and lead to it, as long as the class is small. */
    static BandStrip named(String id, Measure measure, ClassSnapshot snapshot, @Nullable BandRange range) {
        SortedColumn column = snapshot.column(measure.key());
        if (column.n() > BandStrip.MOST_TICKS) {
            return plain(id, measure, snapshot, range);
        }
        List<StripTick> ticks = snapshot.ticks(measure.key()).stream()
                .map(tick -> new StripTick(tick.value(), tick.name(), "/packages/" + tick.packageId()))
                .toList();
        return BandStrip.of(reading(id, measure, column, range).ticks(ticks).build());
    }

    private static StripReading.Builder reading(
            String id, Measure measure, SortedColumn column, @Nullable BandRange range) {
        StripReading.Builder reading = StripReading.of(
                        id,
                        measure.key(),
                        measure.name(),
                        measure.decimals(),
                        measure.unit().symbol())
                .verdict(StripVerdict.CLASS, "");
        if (range != null) {
            reading.band(range.limits().lower(), range.limits().upper())
                    .edges(range.lowerInterval(), range.upperInterval());
        }
        return column.isEmpty() ? reading : reading.median(column.median());
    }
}
