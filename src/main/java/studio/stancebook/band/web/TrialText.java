package studio.stancebook.band.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.band.BandRange;
import studio.stancebook.band.BandTrial;
import studio.stancebook.measure.Measure;

/**
 * What a band would be, as a page writes it.
 *
 * @param limits null when the class gives no such band
 * @param values how many values the whole class has
 * @param outside how many of them lie outside
 */
record TrialText(
        @Nullable RangeText limits,
        @Nullable RangeText lowerInterval,
        @Nullable RangeText upperInterval,
        int n,
        boolean provisional,
        String explanation,
        int values,
        int below,
        int above,
        int outside) {

    static TrialText of(BandTrial trial, Measure measure) {
        BandRange range = trial.range();
        return new TrialText(
                range == null ? null : RangeText.of(range.limits(), measure),
                range == null ? null : RangeText.of(range.lowerInterval(), measure),
                range == null ? null : RangeText.of(range.upperInterval(), measure),
                range == null ? 0 : range.n(),
                range != null && range.provisional(),
                trial.explanation(),
                trial.values(),
                trial.below(),
                trial.above(),
                trial.outside());
    }

    /** Whether the class gives such a band; public because the page asks. */
    public boolean possible() {
        return limits != null;
    }
}
