package studio.stancebook.dimension;

import java.time.Instant;

/**
 * Who set a value, and when.
 *
 * @param by the person's name at the time
 * @param at when the value took its present form
 */
public record Recorded(String by, Instant at) {}
