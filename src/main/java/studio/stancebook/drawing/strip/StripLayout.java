package studio.stancebook.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.paper.Path;
import studio.stancebook.paper.Step;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;

/** Places everything on one strip. */
final class StripLayout {

    private static final int BINS = 100;
    private static final double PROFILE_PX = 18;

    private static final double TICK_TOP_PX = 26;

    /** Where the mark stands that has no value. */
    private static final double BESIDE_THE_START = 24;

    private static final Path NO_PATH = new Path(List.of());

    private final StripReading reading;
    private final StripScale scale;

    StripLayout(StripReading reading) {
        this.reading = reading;
        this.scale = StripScale.of(reading);
    }

    BandStrip strip() {
        boolean dense = reading.ticks().size() > BandStrip.MOST_TICKS;
        boolean named = !dense && reading.ticks().stream().anyMatch(tick -> tick.name() != null);
        Double value = reading.value();
        Double median = reading.median();
        return new BandStrip(
                reading,
                band(),
                edges(),
                dense || named ? NO_PATH : rug(),
                named ? ticks() : List.of(),
                dense ? density() : NO_PATH,
                median == null ? null : scale.at(median),
                value == null ? null : span(value - 2 * reading.uncertainty(), value + 2 * reading.uncertainty()),
                tie(),
                reading.earlier().stream().map(scale::at).toList(),
                value == null ? BESIDE_THE_START : scale.at(value),
                beyond(),
                words());
    }

    private BandStrip.Span span(double from, double to) {
        return new BandStrip.Span(scale.at(from), scale.at(to));
    }

    private BandStrip.@Nullable Span band() {
        Double lower = reading.lower();
        Double upper = reading.upper();
        if (lower == null && upper == null) {
            return null;
        }
        return span(lower == null ? scale.from() : lower, upper == null ? scale.to() : upper);
    }

    private List<BandStrip.Span> edges() {
        List<BandStrip.Span> edges = new ArrayList<>();
        for (Interval edge : intervals(reading.lowerEdge(), reading.upperEdge())) {
            edges.add(span(Math.max(edge.lower(), scale.from()), Math.min(edge.upper(), scale.to())));
        }
        return edges;
    }

    private static List<Interval> intervals(@Nullable Interval lower, @Nullable Interval upper) {
        List<Interval> present = new ArrayList<>();
        if (lower != null) {
            present.add(lower);
        }
        if (upper != null) {
            present.add(upper);
        }
        return present;
    }

    private Path rug() {
        List<Step> steps = new ArrayList<>();
        for (StripTick tick : reading.ticks()) {
            if (scale.shows(tick.value())) {
                steps.add(new Step.MoveTo(scale.at(tick.value()), TICK_TOP_PX));
                steps.add(new Step.LineTo(scale.at(tick.value()), BandStrip.AXIS_PX));
            }
        }
        return new Path(steps);
    }

    private List<BandStrip.PlacedTick> ticks() {
        List<BandStrip.PlacedTick> placed = new ArrayList<>();
        for (StripTick tick : reading.ticks()) {
            if (scale.shows(tick.value())) {
                String name = tick.name() == null ? "" : Lettering.writable(tick.name()) + " ";
                placed.add(new BandStrip.PlacedTick(scale.at(tick.value()), name + text(tick.value()), tick.href()));
            }
        }
        return placed;
    }

    /** A profile of how many lie in each hundredth of the strip, the fullest as high as it gets. */
    private Path density() {
        int[] counts = new int[BINS];
        int most = 1;
        for (StripTick tick : reading.ticks()) {
            if (scale.shows(tick.value())) {
                int bin = (int) Math.min(BINS - 1, scale.at(tick.value()) / BandStrip.WIDTH * BINS);
                most = Math.max(most, ++counts[bin]);
            }
        }
        List<Step> steps = new ArrayList<>();
        steps.add(new Step.MoveTo(0, BandStrip.AXIS_PX));
        for (int i = 0; i < BINS; i++) {
            double top = BandStrip.AXIS_PX - PROFILE_PX * counts[i] / most;
            steps.add(new Step.LineTo(i * BandStrip.WIDTH / BINS, top));
            steps.add(new Step.LineTo((i + 1) * BandStrip.WIDTH / BINS, top));
        }
        steps.add(new Step.LineTo(BandStrip.WIDTH, BandStrip.AXIS_PX));
        steps.add(new Step.Close());
        return new Path(steps);
    }

    private BandStrip.@Nullable Span tie() {
        Double value = reading.value();
        Double lower = reading.lower();
        Double upper = reading.upper();
        return switch (reading.verdict()) {
            case OUTSIDE_LOW -> value == null || lower == null ? null : span(value, lower);
            case OUTSIDE_HIGH -> value == null || upper == null ? null : span(upper, value);
            default -> null;
        };
    }

    private BandStrip.Beyond beyond() {
        int below = 0;
        int above = 0;
        for (StripTick tick : reading.ticks()) {
            below += tick.value() < scale.from() ? 1 : 0;
            above += tick.value() > scale.to() ? 1 : 0;
        }
        return new BandStrip.Beyond(below, above);
    }

    private String text(double value) {
        return Lettering.read(NumberText.fixed(value, reading.decimals())) + reading.unit();
    }

    private StripWords words() {
        Double value = reading.value();
        Double lower = reading.lower();
        Double upper = reading.upper();
        Double median = reading.median();
        return new StripWords(
                value == null ? "–" : text(value),
                lower == null ? "" : text(lower),
                lower == null ? 0 : scale.at(lower),
                upper == null ? "" : text(upper),
                upper == null ? BandStrip.WIDTH : scale.at(upper),
                value == null ? "" : spread(2 * reading.uncertainty()),
                median == null ? "" : text(median),
                description());
    }

    private String description() {
        List<String> parts = new ArrayList<>();
        Double value = reading.value();
        Double lower = reading.lower();
        Double upper = reading.upper();
        Double median = reading.median();
        parts.add(reading.name() + (value == null ? "" : " " + text(value)));
        parts.add(Phrases.of("drawing.verdict." + reading.verdict().key()));
        if (value != null && reading.uncertainty() > 0) {
            parts.add(Phrases.of("drawing.strip.uncertainty", spread(2 * reading.uncertainty())));
        }
        if (lower != null && upper != null) {
            parts.add(Phrases.of("drawing.strip.band", text(lower), text(upper)));
        } else if (lower != null) {
            parts.add(Phrases.of("drawing.strip.band.from", text(lower)));
        } else if (upper != null) {
            parts.add(Phrases.of("drawing.strip.band.to", text(upper)));
        }
        if (!reading.ticks().isEmpty()) {
            parts.add(Phrases.of(
                    "drawing.strip.class", Integer.toString(reading.ticks().size())));
        }
        if (median != null) {
            parts.add(Phrases.of("drawing.strip.median", text(median)));
        }
        if (beyond().below() > 0) {
            parts.add(Phrases.of("drawing.strip.beyond.below", Integer.toString(beyond().below())));
        }
        if (beyond().above() > 0) {
            parts.add(Phrases.of("drawing.strip.beyond.above", Integer.toString(beyond().above())));
        }
        return String.join("; ", parts);
    }

    private String spread(double value) {
        return NumberText.fixed(value, reading.decimals() + 1) + reading.unit();
    }
}
