package studio.stancebook.proposal;

import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;

/**
 * One measure that differs between two assessments.
 *
 * @param before null when the measure was not there
 * @param after null when the measure is not there any more
 */
public record MeasureChange(
        @Nullable Finding before, @Nullable Finding after) {

    public MeasureChange {
        if (before == null && after == null) {
            throw new IllegalArgumentException("A change has a finding before it or after it");
        }
    }

    /** The measure's words. */
    public Finding either() {
        Finding one = after != null ? after : before;
        if (one == null) {
            throw new IllegalStateException("A change has a finding before it or after it");
        }
        return one;
    }

    public boolean verdictChanged() {
        return kind(before) != kind(after);
    }

    private static Verdict.@Nullable VerdictKind kind(@Nullable Finding finding) {
        return finding == null ? null : finding.kind();
    }
}
