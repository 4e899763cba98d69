package studio.stancebook.proposal.chart;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.measure.Measure;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.QuantileType;
import studio.stancebook.statistics.SortedColumn;

/**
 * One segment in the row of all segments for one measure, all on the same axis.
 *
 * @param ticks the class as path data: one tick a benchmark, or heights of a histogram for a large class
 * @param bandX where the band begins; empty without a band
 * @param median as path data; empty without a value
 * @param version of the band; null without one
 */
record Multiple(
        SegmentName segment,
        boolean own,
        int n,
        String ticks,
        String bandX,
        String bandWidth,
        String median,
        String range,
        String quartiles,
        String medianText,
        @Nullable Integer version) {

    static final double WIDTH = 1000;

    private static final int MOST_TICKS = 120;
    private static final int BINS = 100;

    static Multiple of(SegmentName segment, boolean own, SortedColumn column, @Nullable Band band, Axis axis) {
        BandRange range = band == null ? null : band.range();
        double from = range == null ? 0 : clamped(axis, range.limits().lower());
        double to = range == null ? 0 : clamped(axis, range.limits().upper());
        Measure measure = axis.measure();
        return new Multiple(
                segment,
                own,
                column.n(),
                column.n() > MOST_TICKS ? histogram(column, axis) : ticks(column, axis),
                range == null ? "" : NumberText.plain(from, 1),
                range == null ? "" : NumberText.plain(Math.max(0, to - from), 1),
                column.isEmpty() ? "" : "M" + axis.text(column.median()) + " 0V40",
                range == null
                        ? ""
                        : limit(range.limits().lower(), measure) + " – "
                                + limit(range.limits().upper(), measure),
                column.isEmpty()
                        ? ""
                        : value(column.quantile(0.25, QuantileType.TYPE_7), measure) + " – "
                                + value(column.quantile(0.75, QuantileType.TYPE_7), measure),
                column.isEmpty() ? "" : value(column.median(), measure),
                band == null || range == null ? null : band.version());
    }

    private static double clamped(Axis axis, double limit) {
        return Math.max(0, Math.min(WIDTH, Double.isInfinite(limit) ? (limit < 0 ? 0 : WIDTH) : axis.at(limit)));
    }

    private static String limit(double limit, Measure measure) {
        return Double.isInfinite(limit) ? "…" : value(limit, measure);
    }

    private static String value(double value, Measure measure) {
        return NumberText.shown(value, measure.decimals());
    }

    private static String ticks(SortedColumn column, Axis axis) {
        StringBuilder path = new StringBuilder();
        for (double value : column.toArray()) {
            path.append('M').append(axis.text(value)).append(" 14V34");
        }
        return path.toString();
    }

    private static String histogram(SortedColumn column, Axis axis) {
        int[] counts = new int[BINS];
        int most = 1;
        for (double value : column.toArray()) {
            int bin = (int) Math.max(0, Math.min(BINS - 1, axis.at(value) / WIDTH * BINS));
            most = Math.max(most, ++counts[bin]);
        }
        StringBuilder path = new StringBuilder();
        for (int bin = 0; bin < BINS; bin++) {
            if (counts[bin] > 0) {
                path.append('M')
                        .append(NumberText.plain((bin + 0.5) * WIDTH / BINS, 1))
                        .append(" 34V")
                        .append(NumberText.plain(34 - 30.0 * counts[bin] / most, 1));
            }
        }
        return path.toString();
    }

    /** Whether the segment has a value; public because the page asks. */
    public boolean any() {
        return n > 0;
    }

    /** The axis of all segments. */
    static Axis axis(Iterable<SortedColumn> columns, Measure measure) {
        OptionalDouble least = OptionalDouble.empty();
        OptionalDouble most = OptionalDouble.empty();
        for (SortedColumn column : columns) {
            if (!column.isEmpty()) {
                least = OptionalDouble.of(Math.min(least.orElse(column.min()), column.min()));
                most = OptionalDouble.of(Math.max(most.orElse(column.max()), column.max()));
            }
        }
        return Axis.around(
                least.orElse(Double.POSITIVE_INFINITY), most.orElse(Double.NEGATIVE_INFINITY), 0, WIDTH, measure);
    }
}
