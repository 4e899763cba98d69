package studio.stancebook.band;

import studio.stancebook.quantity.Interval;
import studio.stancebook.statistics.BandMethod;

/**
 * A rule of thumb of the trade as a band.
 *
 * @param measure key of the measure
 * @param limits in the measure's unit
 * @param reason in words, marked as common practice
 */
public record PracticeBand(String measure, Interval limits, String reason) {

    /** The band as a rule that can be set. */
    public BandSetting setting() {
        return BandSetting.of(new BandMethod.Rule(limits.lower(), limits.upper(), reason));
    }
}
