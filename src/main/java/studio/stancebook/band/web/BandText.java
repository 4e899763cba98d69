package studio.stancebook.band.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import studio.stancebook.band.internal.WrittenSetting;
import studio.stancebook.measure.Measure;

/**
 * A version of a band as a page writes it.
 *
 * @param method key of the method
 * @param limits null for a version that withdraws the band
 * @param lowerInterval where the lower edge would lie if the whole population were known; null where that is not said
 * @param at when it was set, to the minute in UTC
 */
record BandText(
        int version,
        String method,
        @Nullable RangeText limits,
        @Nullable RangeText lowerInterval,
        @Nullable RangeText upperInterval,
        int n,
        boolean provisional,
        boolean computed,
        String explanation,
        String reason,
        long classRevision,
        String by,
        String at) {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);

    static BandText of(Band band, Measure measure) {
        BandRange range = band.range();
        return new BandText(
                band.version(),
                WrittenSetting.of(band).methodKey(),
                range == null ? null : RangeText.of(range.limits(), measure),
                range == null ? null : RangeText.of(range.lowerInterval(), measure),
                range == null ? null : RangeText.of(range.upperInterval(), measure),
                range == null ? 0 : range.n(),
                range != null && range.provisional(),
                band.computed(),
                band.explanation(),
                band.reason(),
                band.classRevision(),
                band.by(),
                MINUTE.format(band.at()));
    }

    /** False for a version that withdraws the band; public because the page asks. */
    public boolean inForce() {
        return limits != null;
    }
}
