package studio.stancebook.drawing.strip;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.paper.Path;

/**
 * A band strip: the class as ticks, the band as a bar with its uncertain edges, the proposal as a mark with a whisker of
 * two standard uncertainties. All x are from 0 to 1000; heights are px, since a strip is stretched in width alone.
 *
 * @param reading what it shows
 * @param band the bar; null without a band
 * @param edges the uncertain edges
 * @param rug all ticks as one path; empty when they are named or too many
 * @param ticks named ticks; empty when they are not named or too many
 * @param density the class as a profile; empty up to {@value #MOST_TICKS} ticks
 * @param median x; null when there is none
 * @param whisker two standard uncertainties to both sides of the value; null without a value
 * @param tie from the edge to a value outside it; null inside
 * @param earlier x of earlier values, oldest first
 * @param mark x of the proposal's mark
 * @param beyond how many ticks lie off the strip, below and above
 * @param words what is written
 */
public record BandStrip(
        StripReading reading,
        @Nullable Span band,
        List<Span> edges,
        Path rug,
        List<PlacedTick> ticks,
        Path density,
        @Nullable Double median,
        @Nullable Span whisker,
        @Nullable Span tie,
        List<Double> earlier,
        double mark,
        Beyond beyond,
        StripWords words) {

    /** How wide a strip is, before it is stretched to its page. */
    public static final double WIDTH = 1000;

    /** How high it is. */
    public static final int HEIGHT_PX = 46;

    /** Where the ticks and the profile stand, from the top. */
    public static final double AXIS_PX = 34;

    /** More ticks than this are drawn as a density. */
    public static final int MOST_TICKS = 150;

    public BandStrip {
        edges = List.copyOf(edges);
        ticks = List.copyOf(ticks);
        earlier = List.copyOf(earlier);
    }

    /** Lays out a reading. */
    public static BandStrip of(StripReading reading) {
        return new StripLayout(reading).strip();
    }

    /** A piece of the strip, 0 to 1000. */
    public record Span(double x, double end) {

        /** Never negative: a span that ends before it begins has no width. */
        public double width() {
            return Math.max(end - x, 0);
        }
    }

    /** A named tick. */
    public record PlacedTick(
            double x, String words, @Nullable String href) {}

    /** Ticks off the strip. */
    public record Beyond(int below, int above) {}

    /** The class that says the verdict to the style sheet. */
    public String cls() {
        return "band-strip band-strip--" + reading.verdict().key();
    }

    /** The shape of the mark around its own centre, px. */
    public String markShape() {
        return switch (reading.verdict()) {
            case CLASS -> "";
            case NOT_MEASURABLE -> "M-6 0A6 6 0 0 1 6 0A6 6 0 0 1-6 0Z";
            default -> "M0-9L9 0L0 9L-9 0Z";
        };
    }

    /** The hatching of a mark that is too close to call; empty for others. */
    public String markHatch() {
        return reading.verdict() == StripVerdict.TOO_CLOSE ? "M-6-3V3M-3-6V6M0-9V9M3-6V6M6-3V3" : "";
    }

    public boolean banded() {
        return band != null;
    }

    /** True when each tick says whose it is. */
    public boolean named() {
        return !ticks.isEmpty();
    }

    public boolean linked() {
        return reading.href() != null;
    }

    /** How many are in the class. */
    public int count() {
        return reading.ticks().size();
    }
}
