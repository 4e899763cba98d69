package studio.stancebook.band.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import studio.stancebook.band.internal.WrittenSetting;
import studio.stancebook.quantity.Interval;

/**
 * One version of a band as it is sent: the range, how it came about, and the setting in the shape in which it can be
 * sent back.
 *
 * @param lower null when that side is open, or when there is no band
 * @param upper likewise
 * @param lowerInterval where the lower edge would lie if the whole population were known, at 95 %: [from, to], an open
 *     end being null; null where that is not said
 * @param n how many values of the class it was computed from
 * @param inForce false for a version that withdraws the band
 */
@JsonInclude(JsonInclude.Include.ALWAYS)
record BandAnswer(
        String segment,
        String measure,
        int version,
        String method,
        @Nullable Double lower,
        @Nullable Double upper,
        @Nullable Double @Nullable [] lowerInterval,
        @Nullable Double @Nullable [] upperInterval,
        int n,
        boolean provisional,
        boolean inForce,
        String explanation,
        String reason,
        WrittenSetting setting,
        long classRevision,
        Instant at,
        String by) {

    static BandAnswer of(Band band) {
        BandRange range = band.range();
        WrittenSetting setting = WrittenSetting.of(band);
        return new BandAnswer(
                band.segment(),
                band.measure(),
                band.version(),
                setting.methodKey(),
                range == null ? null : finite(range.limits().lower()),
                range == null ? null : finite(range.limits().upper()),
                range == null ? null : pair(range.lowerInterval()),
                range == null ? null : pair(range.upperInterval()),
                range == null ? 0 : range.n(),
                range != null && range.provisional(),
                band.inForce(),
                band.explanation(),
                band.reason(),
                setting,
                band.classRevision(),
                band.at(),
                band.by());
    }

    private static @Nullable Double finite(double end) {
        return Double.isInfinite(end) ? null : end;
    }

    private static @Nullable Double @Nullable [] pair(@Nullable Interval interval) {
        return interval == null ? null : new Double[] {finite(interval.lower()), finite(interval.upper())};
    }
}
