package studio.stancebook.band;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One version of the band of a measure in a segment.
 *
 * @param segment key of the segment
 * @param measure key of the measure
 * @param version 1 for the first
 * @param setting how it was found; null for a version that withdraws the band
 * @param range what it allows; null for a version that withdraws the band
 * @param explanation how the range came about, in words
 * @param reason why it was set so; may be empty but for a rule and a withdrawal
 * @param classRevision the revision of the class that it was set on
 * @param at when
 * @param by the name that who set it has now
 */
public record Band(
        String segment,
        String measure,
        int version,
        @Nullable BandSetting setting,
        @Nullable BandRange range,
        String explanation,
        String reason,
        long classRevision,
        Instant at,
        String by) {

    /** False for a version that withdraws the band. */
    public boolean inForce() {
        return range != null;
    }

    /** True when the edges come from the class, so that they may move with it. */
    public boolean computed() {
        return setting != null && setting.computed();
    }

    /** What an assessment takes of it; null when it is withdrawn. */
    public @Nullable AppliedBand applied() {
        return range == null ? null : new AppliedBand(version, range.limits());
    }
}
