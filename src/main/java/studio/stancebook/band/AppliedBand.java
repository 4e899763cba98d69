package studio.stancebook.band;

import studio.stancebook.quantity.Interval;

/**
 * What an assessment needs to know of a band.
 *
 * @param version of the band, 1 for the first
 * @param limits closed, in the measure's unit; an infinite end leaves that side open
 */
public record AppliedBand(int version, Interval limits) {}
