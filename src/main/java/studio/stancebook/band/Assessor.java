package studio.stancebook.band;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.NotMeasurable;
import studio.stancebook.measure.Note;
import studio.stancebook.measure.Subject;
import studio.stancebook.quantity.Interval;

/** Holds a side view against bands. The decision rule is in {@link Limits}. */
public final class Assessor {

    private final MeasureRegistry measures;

    /** @param measures to assess, in their order */
    public Assessor(MeasureRegistry measures) {
        this.measures = measures;
    }

    /**
     * @param set the side view
     * @param bands by key of the measure; a measure without one is answered with {@link Verdict.NoBand}
     */
    public Assessment assess(DimensionSet set, Map<String, AppliedBand> bands) {
        return new Assessment(measures.valuesOf(new Subject(set)).entrySet().stream()
                .map(entry -> finding(
                        entry.getKey(),
                        entry.getValue(),
                        bands.get(entry.getKey().key())))
                .toList());
    }

    private static Finding finding(Measure measure, MeasureValue value, @Nullable AppliedBand band) {
        Measured measured = value instanceof Measured m ? m : null;
        return new Finding(
                measure.key(),
                measure.name(),
                measure.unit(),
                measure.decimals(),
                measured == null ? null : measured.value(),
                measured == null ? null : measured.uncertainty(),
                band,
                verdict(value, band),
                measured == null
                        ? List.of()
                        : measured.notes().stream().map(Note::label).sorted().toList());
    }

    private static Verdict verdict(MeasureValue value, @Nullable AppliedBand band) {
        if (value instanceof NotMeasurable none) {
            return new Verdict.NotMeasurable(none.reason(), none.missing());
        }
        return band == null ? new Verdict.NoBand() : judge((Measured) value, band.limits());
    }

    /**
     * The verdict on one value.
     *
     * @param band closed, in the measure's unit
     */
    public static Verdict judge(Measured measured, Interval band) {
        Limits limits = new Limits(band);
        if (limits.hold(measured.value(), measured.uncertainty())) {
            return new Verdict.Inside();
        }
        Optional<Side> beyond = limits.beyond(measured.value(), measured.uncertainty());
        return beyond.isEmpty() ? new Verdict.TooClose() : outside(measured, limits, beyond.get());
    }

    private static Verdict outside(Measured measured, Limits limits, Side side) {
        double by = limits.distance(side, measured.value());
        return new Verdict.Outside(side, by, limits.inBandWidths(by));
    }
}
