package studio.stancebook.account.internal;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A token as its owner sees it in a list.
 *
 * @param lastUsedAt to the minute; absent when it was never used
 */
public record TokenEntry(
        long id, String name, Instant createdAt, @Nullable Instant lastUsedAt) {}
