package studio.stancebook.proposal;

import java.time.Instant;

/**
 * One revision in a list.
 *
 * @param number 1 for the first
 * @param author the name of who made it
 * @param judged how many measures were held against a band
 */
public record RevisionSummary(
        int number, String note, String author, Instant at, int judged, int outside, int tooClose) {}
