package studio.stancebook.band.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.measure.Measure;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;

/**
 * An interval as a page writes it.
 *
 * @param key of the message that the two figures go into
 * @param from with the unit; empty when open
 * @param to with the unit; empty when open
 */
record RangeText(String key, String from, String to) {

    private static final String KEY = "band.range.";

    /** Null for null. */
    static @Nullable RangeText of(@Nullable Interval interval, Measure measure) {
        if (interval == null) {
            return null;
        }
        boolean open = Double.isInfinite(interval.lower());
        boolean openAbove = Double.isInfinite(interval.upper());
        return new RangeText(
                KEY + (open ? "to" : openAbove ? "from" : "both"),
                open ? "" : text(interval.lower(), measure),
                openAbove ? "" : text(interval.upper(), measure));
    }

    private static String text(double value, Measure measure) {
        return NumberText.shown(value, measure.decimals()) + measure.unit().symbol();
    }
}
