package studio.stancebook.catalogue;

import java.time.Instant;

/**
 * That something does not count in its class, though it stays recorded.
 *
 * @param reason why, in words
 * @param by the name of who set it aside
 * @param at when
 */
public record SetAside(String reason, String by, Instant at) {}
