package studio.stancebook.account.internal;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A token as its owner sees it in a list.
 *
 * @param lastUsedAt to the minute; absent when it was never used
 * @param expiresAt from when on it is refused
 */
public record TokenEntry(
        long id,
        String name,
        TokenScope scope,
        Instant createdAt,
        @Nullable Instant lastUsedAt,
        Instant expiresAt) {}
