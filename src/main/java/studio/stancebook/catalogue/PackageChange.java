package studio.stancebook.catalogue;

import java.time.Instant;

/**
 * That a benchmark package was recorded or changed.
 *
 * @param by the name of who did it
 */
public record PackageChange(long id, String name, String segmentName, Instant at, String by) {}
