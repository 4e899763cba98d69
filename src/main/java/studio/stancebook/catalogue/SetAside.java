package studio.stancebook.catalogue;

import java.time.Instant;

/**
 * That something does not count in its class, though it stays recorded.
 *
 * @param reason why, in words
 * @param by the name that who set it aside has now
 * @param at when
 */
public record SetAside(String reason, String by, Instant at) {}
