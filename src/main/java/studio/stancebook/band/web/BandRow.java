package studio.stancebook.band.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.strip.BandStrip;

/**
 * A measure on the page of all bands of a segment.
 *
 * @param strip null when the class has no value and there is no band
 * @param band the newest version; null when there never was one
 * @param today what the band would be on the class as it is now, where that differs; else null
 */
record BandRow(
        String measure,
        String name,
        @Nullable BandStrip strip,
        int values,
        @Nullable BandText band,
        @Nullable TrialText today) {}
