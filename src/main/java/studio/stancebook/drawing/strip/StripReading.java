package studio.stancebook.drawing.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.quantity.Interval;

/**
 * Everything that a band strip shows, in the measure's unit.
 *
 * @param id unique on the page
 * @param measure the measure's key
 * @param name the measure's name
 * @param decimals how many decimals its values are written with
 * @param unit symbol written after them; empty for a ratio
 * @param ticks the class
 * @param lower lower edge of the band; null where it is open or there is none
 * @param upper upper edge of the band; null where it is open or there is none
 * @param lowerEdge where the lower edge may lie; null when it is sure
 * @param upperEdge where the upper edge may lie; null when it is sure
 * @param median of the class; null when there is none
 * @param value of the proposal; null when it cannot be measured
 * @param uncertainty its standard uncertainty, not negative
 * @param earlier values of earlier revisions, oldest first
 * @param verdict what it comes to
 * @param remark by how much and what would mend it; empty where there is nothing to say
 * @param href the page of the class; null without a link
 */
public record StripReading(
        String id,
        String measure,
        String name,
        int decimals,
        String unit,
        List<StripTick> ticks,
        @Nullable Double lower,
        @Nullable Double upper,
        @Nullable Interval lowerEdge,
        @Nullable Interval upperEdge,
        @Nullable Double median,
        @Nullable Double value,
        double uncertainty,
        List<Double> earlier,
        StripVerdict verdict,
        String remark,
        @Nullable String href) {

    /** @throws IllegalArgumentException if a number is not finite or the uncertainty negative */
    public StripReading {
        name = Lettering.writable(name);
        remark = Lettering.writable(remark);
        ticks = List.copyOf(ticks);
        earlier = List.copyOf(earlier);
        if (!(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
            throw new IllegalArgumentException("An uncertainty is 0 or more and finite, got " + uncertainty);
        }
        for (Double number : numbers(lower, upper, median, value)) {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("A strip needs finite numbers; " + measure + " has " + number);
            }
        }
    }

    /**
     * The same read the other way round, so that low is high.
     *
     * @param otherName of the measure read that way
     * @param turn from each value to the one that is shown, decreasing
     */
    public StripReading mirrored(String otherName, DoubleUnaryOperator turn) {
        return new StripReading(
                id,
                measure,
                otherName,
                decimals,
                unit,
                ticks.stream()
                        .map(tick -> new StripTick(turn.applyAsDouble(tick.value()), tick.name(), tick.href()))
                        .sorted(Comparator.comparingDouble(StripTick::value))
                        .toList(),
                turned(upper, turn),
                turned(lower, turn),
                turned(upperEdge, turn),
                turned(lowerEdge, turn),
                turned(median, turn),
                turned(value, turn),
                uncertainty,
                earlier.stream().map(turn::applyAsDouble).toList(),
                verdict.mirrored(),
                remark,
                href);
    }

    private static @Nullable Double turned(@Nullable Double number, DoubleUnaryOperator turn) {
        return number == null ? null : turn.applyAsDouble(number);
    }

    private static @Nullable Interval turned(@Nullable Interval edge, DoubleUnaryOperator turn) {
        return edge == null ? null : new Interval(turn.applyAsDouble(edge.upper()), turn.applyAsDouble(edge.lower()));
    }

    private static List<Double> numbers(@Nullable Double... values) {
        List<Double> present = new ArrayList<>();
        for (Double value : values) {
            if (value != null) {
                present.add(value);
            }
        }
        return present;
    }

    /** A reading of a measure that shows nothing yet. */
    public static Builder of(String id, String measure, String name, int decimals, String unit) {
        return new Builder(id, measure, name, decimals, unit);
    }

    /** Collects a reading. */
    public static final class Builder {

        private final String id;
        private final String measure;
        private final String name;
        private final int decimals;
        private final String unit;
        private final List<StripTick> ticks = new ArrayList<>();
        private final List<Double> earlier = new ArrayList<>();
        private @Nullable Double lower;
        private @Nullable Double upper;
        private @Nullable Interval lowerEdge;
        private @Nullable Interval upperEdge;
        private @Nullable Double median;
        private @Nullable Double value;
        private double uncertainty;
        private StripVerdict verdict = StripVerdict.NO_BAND;
        private String remark = "";
        private @Nullable String href;

        private Builder(String id, String measure, String name, int decimals, String unit) {
            this.id = id;
            this.measure = measure;
            this.name = name;
            this.decimals = decimals;
            this.unit = unit;
        }

        /** Ticks without names. */
        public Builder ticks(double... values) {
            for (double tick : values) {
                ticks.add(new StripTick(tick, null, null));
            }
            return this;
        }

        public Builder ticks(List<StripTick> named) {
            ticks.addAll(named);
            return this;
        }

        /** The band; an infinite end is an open one. */
        public Builder band(double lowerEnd, double upperEnd) {
            lower = Double.isFinite(lowerEnd) ? lowerEnd : null;
            upper = Double.isFinite(upperEnd) ? upperEnd : null;
            return this;
        }

        /** Where the edges may lie. */
        public Builder edges(@Nullable Interval lowerInterval, @Nullable Interval upperInterval) {
            lowerEdge = lowerInterval;
            upperEdge = upperInterval;
            return this;
        }

        public Builder median(double classMedian) {
            median = classMedian;
            return this;
        }

        public Builder value(double proposed, double standardUncertainty) {
            value = proposed;
            uncertainty = standardUncertainty;
            return this;
        }

        public Builder earlier(List<Double> values) {
            earlier.addAll(values);
            return this;
        }

        public Builder verdict(StripVerdict found, String words) {
            verdict = found;
            remark = words;
            return this;
        }

        /** Where the name leads. */
        public Builder link(String classPage) {
            href = classPage;
            return this;
        }

        public StripReading build() {
            return new StripReading(
                    id,
                    measure,
                    name,
                    decimals,
                    unit,
                    ticks,
                    lower,
                    upper,
                    lowerEdge,
                    upperEdge,
                    median,
                    value,
                    uncertainty,
                    earlier,
                    verdict,
                    remark,
                    href);
        }
    }
}
