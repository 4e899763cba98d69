package studio.stancebook.band;

import org.jspecify.annotations.Nullable;

/**
 * What a band would be if it were set now.
 *
 * @param range what it would allow; null when the class gives no such band
 * @param explanation how the range comes about, or why there is none, in words
 * @param values how many values the whole class has
 * @param below how many of them lie below the band
 * @param above how many of them lie above the band
 * @param classRevision the revision of the class
 */
public record BandTrial(
        @Nullable BandRange range, String explanation, int values, int below, int above, long classRevision) {

    /** How many values of the class lie outside. */
    public int outside() {
        return below + above;
    }

    public boolean possible() {
        return range != null;
    }

    /** True when the limits differ from those of a band in force. */
    public boolean differsFrom(Band band) {
        BandRange set = band.range();
        return set == null ? range != null : range == null || !range.limits().equals(set.limits());
    }
}
