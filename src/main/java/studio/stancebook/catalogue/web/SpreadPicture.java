package studio.stancebook.catalogue.web;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.QuantileType;
import studio.stancebook.statistics.SortedColumn;

/**
 * The values of one measure over a class as a small picture, 0 to 1000 from the smallest to the largest: a line from end
 * to end, a bar from the lower to the upper quartile, the median, and a tick for each value as long as they are few. The
 * same figures stand beside it.
 *
 * @param line from the smallest to the largest value, as path data
 * @param barX where the bar begins
 * @param barWidth how wide it is
 * @param median as path data
 * @param ticks as path data; empty for a large class
 * @param mark place of one value among them; null without one
 */
record SpreadPicture(
        String line,
        String barX,
        String barWidth,
        String median,
        String ticks,
        @Nullable String mark) {

    private static final int MOST_TICKS = 150;
    private static final double MARGIN = 12;

    /** The picture of a class; null when it has no values. */
    static @Nullable SpreadPicture of(SortedColumn column, QuantileType type) {
        return of(column, type, OptionalDouble.empty());
    }

    /** The picture of a class with one value marked; null when the class has no values. */
    static @Nullable SpreadPicture of(SortedColumn column, QuantileType type, OptionalDouble marked) {
        if (column.isEmpty()) {
            return null;
        }
        ValueAxis axis = new ValueAxis(
                Math.min(column.min(), marked.orElse(column.min())),
                Math.max(column.max(), marked.orElse(column.max())));
        double bar = axis.at(column.quantile(0.25, type));
        return new SpreadPicture(
                "M" + text(axis.at(column.min())) + " 13H" + text(axis.at(column.max())),
                text(bar),
                text(axis.at(column.quantile(0.75, type)) - bar),
                "M" + text(axis.at(column.median())) + " 2V24",
                column.n() > MOST_TICKS ? "" : ticks(column, axis),
                marked.isPresent() ? text(axis.at(marked.getAsDouble()) / 10) : null);
    }

    private static String ticks(SortedColumn column, ValueAxis axis) {
        StringBuilder path = new StringBuilder();
        for (double value : column.toArray()) {
            path.append('M').append(text(axis.at(value))).append(" 19V25");
        }
        return path.toString();
    }

    private static String text(double x) {
        return NumberText.plain(x, 1);
    }

    private record ValueAxis(double least, double most) {

        double at(double value) {
            double share = most > least ? (value - least) / (most - least) : 0.5;
            return MARGIN + share * (1000 - 2 * MARGIN);
        }
    }
}
