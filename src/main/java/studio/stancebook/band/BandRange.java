package studio.stancebook.band;

import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.Interval;

/**
 * What a band allows.
 *
 * @param limits closed, in the measure's unit; an infinite end leaves that side open
 * @param lowerInterval where the lower edge would lie if the whole population were known, at 95 %; null where that is
 *     not said, as for a rule
 * @param upperInterval the same for the upper edge
 * @param n how many values of the class it was computed from
 * @param provisional true when computed from fewer than eight
 */
public record BandRange(
        Interval limits,
        @Nullable Interval lowerInterval,
        @Nullable Interval upperInterval,
        int n,
        boolean provisional) {}
