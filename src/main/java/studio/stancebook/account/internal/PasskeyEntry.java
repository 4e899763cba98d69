package studio.stancebook.account.internal;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A passkey as its owner sees it in a list.
 *
 * @param lastUsedAt absent when nobody signed in with it yet
 */
public record PasskeyEntry(
        long id, String label, Instant createdAt, @Nullable Instant lastUsedAt) {}
