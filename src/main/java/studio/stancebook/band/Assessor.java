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
        return assess(set, bands, SingleMoves::of);
    }

    /** As {@link #assess}, without the single moves: for those who ask how it stands and not what to do. */
    public Assessment verdicts(DimensionSet set, Map<String, AppliedBand> bands) {
        return assess(set, bands, (measure, same, measured, wanted) -> List.of());
    }

    private Assessment assess(DimensionSet set, Map<String, AppliedBand> bands, Moves moves) {
        return new Assessment(measures.valuesOf(new Subject(set)).entrySet().stream()
                .map(entry -> finding(
                        entry.getKey(),
                        entry.getValue(),
                        set,
                        bands.get(entry.getKey().key()),
                        moves))
                .toList());
    }

    /** How single moves are found. */
    private interface Moves {

        List<SingleMove> of(Measure measure, DimensionSet set, Measured measured, double wanted);
    }

    private static Finding finding(
            Measure measure, MeasureValue value, DimensionSet set, @Nullable AppliedBand band, Moves moves) {
        Measured measured = value instanceof Measured m ? m : null;
        return new Finding(
                measure.key(),
                measure.name(),
                measure.unit(),
                measure.decimals(),
                measured == null ? null : measured.value(),
                measured == null ? null : measured.uncertainty(),
                band,
                verdict(measure, value, set, band, moves),
                measured == null
                        ? List.of()
                        : measured.notes().stream().map(Note::label).sorted().toList());
    }

    private static Verdict verdict(
            Measure measure, MeasureValue value, DimensionSet set, @Nullable AppliedBand band, Moves moves) {
        if (value instanceof NotMeasurable none) {
            return new Verdict.NotMeasurable(none.reason(), none.missing());
        }
        return band == null ? new Verdict.NoBand() : judge(measure, (Measured) value, set, band.limits(), moves);
    }

    /**
     * The verdict on one value.
     *
     * @param measure whose value it is
     * @param measured the value of {@code set}
     * @param band closed, in the measure's unit
     */
    public static Verdict judge(Measure measure, Measured measured, DimensionSet set, Interval band) {
        return judge(measure, measured, set, band, SingleMoves::of);
    }

    private static Verdict judge(Measure measure, Measured measured, DimensionSet set, Interval band, Moves moves) {
        Limits limits = new Limits(band);
        if (limits.hold(measured.value(), measured.uncertainty())) {
            return new Verdict.Inside();
        }
        Optional<Side> beyond = limits.beyond(measured.value(), measured.uncertainty());
        return beyond.isEmpty() ? new Verdict.TooClose() : outside(measure, measured, set, limits, beyond.get(), moves);
    }

    private static Verdict outside(
            Measure measure, Measured measured, DimensionSet set, Limits limits, Side side, Moves moves) {
        double by = limits.distance(side, measured.value());
        return new Verdict.Outside(
                side, by, limits.inBandWidths(by), moves.of(measure, set, measured, limits.edge(side)));
    }
}
