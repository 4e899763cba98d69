package studio.stancebook.proposal;

import java.time.Instant;

/**
 * What was decided on a revision.
 *
 * @param revision its number
 * @param by name of the person who decided, as it is now
 */
public record Decision(int revision, Outcome outcome, String reason, String by, Instant at) {}
