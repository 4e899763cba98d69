package studio.stancebook.web.idempotency;

import org.jspecify.annotations.Nullable;

/**
 * What is known about an earlier post with the same key.
 *
 * @param requestHash of method, address and body of that post
 * @param status of its answer; null while it is still being worked on
 * @param body of its answer; null if that was too long to keep
 */
record StoredResponse(
        String requestHash,
        @Nullable Integer status,
        @Nullable String contentType,
        @Nullable String location,
        @Nullable String etag,
        @Nullable String body) {}
