package studio.stancebook.band;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A finding in one flat line, as the HTTP interface sends it and as it is kept. What does not apply is null or empty.
 *
 * @param measure key of the measure
 * @param name of the measure
 * @param unit key of the measure's unit
 * @param decimals that a page shows
 * @param value null when not measurable
 * @param uncertainty the standard uncertainty
 * @param lower null when that side is open or there is no band
 * @param upper null when that side is open or there is no band
 * @param bandVersion null when there is no band
 * @param verdict inside, outside-low, outside-high, too-close, not-measurable or no-band
 * @param by distance from the edge when outside
 * @param byBandWidths the same as a share of the band's width, where it has one
 * @param singleMoves back to the edge, the relatively smallest first
 * @param missing what would have to be recorded, in JSON names
 * @param reason why it is not measurable, in words
 * @param notes what must be said beside the value
 */
public record VerdictLine(
        String measure,
        String name,
        String unit,
        int decimals,
        @Nullable Double value,
        @Nullable Double uncertainty,
        @Nullable Double lower,
        @Nullable Double upper,
        @Nullable Integer bandVersion,
        String verdict,
        @Nullable Double by,
        @Nullable Double byBandWidths,
        List<MoveLine> singleMoves,
        List<String> missing,
        @Nullable String reason,
        List<String> notes) {

    public VerdictLine {
        singleMoves = List.copyOf(singleMoves);
        missing = List.copyOf(missing);
        notes = List.copyOf(notes);
    }

    /**
     * A single move in one line.
     *
     * @param dimension key of the variable, such as {@code wheelbase} or {@code cowl.x}
     * @param change in its unit
     * @param label of the variable
     * @param unit symbol of its unit
     * @param share the size of the change relative to what is changed
     */
    public record MoveLine(String dimension, double change, String label, String unit, double share) {}
}
