package studio.stancebook.band;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.measure.MeasureUnit;

/**
 * One measure of an assessment. It names the measure by words of its own, so that it can be read when the measure is no
 * longer there.
 *
 * @param measure key of the measure
 * @param name of the measure
 * @param unit of value, uncertainty and limits
 * @param decimals that a page shows
 * @param value null when not measurable
 * @param uncertainty the combined standard uncertainty; null when not measurable
 * @param band that was applied; null when there was none
 * @param verdict how the value stands to the band
 * @param notes what must be said beside the value, in words
 */
public record Finding(
        String measure,
        String name,
        MeasureUnit unit,
        int decimals,
        @Nullable Double value,
        @Nullable Double uncertainty,
        @Nullable AppliedBand band,
        Verdict verdict,
        List<String> notes) {

    public Finding {
        notes = List.copyOf(notes);
    }

    public Verdict.VerdictKind kind() {
        return verdict.kind();
    }
}
