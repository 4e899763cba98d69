package studio.stancebook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Scale;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;
import studio.stancebook.statistics.ModifiedZ;
import studio.stancebook.statistics.SortedColumn;

/** Tells in which measures others differ from a reference, the most unusual difference first. */
public final class Differences {

    /** Ends the keys of measures that are a length over the tyre diameter. */
    private static final String LENGTH_IN_WHEELS = "-in-wheels";

    private static final Comparator<Difference> MOST_UNUSUAL_FIRST = Comparator.comparingDouble(
                    (Difference one) -> -Math.abs(one.spreads().orElse(0)))
            .thenComparing(one -> one.spreads().isEmpty());

    private final MeasureRegistry measures;
    private final Function<String, SortedColumn> columns;

    /** @param columns the values of the reference's class by the key of a measure */
    public Differences(MeasureRegistry measures, Function<String, SortedColumn> columns) {
        this.measures = measures;
        this.columns = columns;
    }

    /** Every difference in what both have; those without a class to be held against come last. */
    public List<Difference> between(Compared reference, List<Compared> others) {
        Values own = new Values(reference);
        List<Difference> found = new ArrayList<>();
        for (Compared other : others) {
            Values its = new Values(other);
            own.measured.forEach((measure, value) -> {
                if (value instanceof Measured from && its.measured.get(measure) instanceof Measured to) {
                    found.add(difference(measure, other.name(), own, from.value(), its, to.value()));
                }
            });
        }
        found.sort(MOST_UNUSUAL_FIRST);
        return found;
    }

    private Difference difference(Measure measure, String name, Values own, double from, Values its, double to) {
        boolean lengths =
                measure.key().endsWith(LENGTH_IN_WHEELS) && own.wheelMm.isPresent() && its.wheelMm.isPresent();
        OptionalDouble mm = lengths
                ? OptionalDouble.of(to * its.wheelMm.getAsDouble() - from * own.wheelMm.getAsDouble())
                : OptionalDouble.empty();
        return new Difference(measure, name, from, to, mm, spreads(measure, from, to));
    }

    /** Both scores are from the same median by the same spread, so their difference is the difference in spreads. */
    private OptionalDouble spreads(Measure measure, double from, double to) {
        ModifiedZ screen = ModifiedZ.by(columns.apply(measure.key()));
        OptionalDouble first = screen.screen(from).score();
        OptionalDouble second = screen.screen(to).score();
        return first.isPresent() && second.isPresent()
                ? OptionalDouble.of(second.getAsDouble() - first.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The measures of one, and its tyre diameter unless its lengths have no dimension. */
    private final class Values {

        private final Map<Measure, MeasureValue> measured;
        private final OptionalDouble wheelMm;

        Values(Compared one) {
            Subject subject = new Subject(one.dimensions());
            measured = measures.valuesOf(subject);
            wheelMm = one.dimensions().scale() == Scale.UNSCALED
                    ? OptionalDouble.empty()
                    : subject.readings()
                            .find(Reading.WHEEL_DIAMETER)
                            .map(Estimate::value)
                            .map(OptionalDouble::of)
                            .orElseGet(OptionalDouble::empty);
        }
    }
}
