package studio.stancebook.activity;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Which lines are looked for; null for no limit.
 *
 * @param person the id of who did it
 * @param kind such as {@code package}
 * @param subject the id or key of the thing
 * @param from the first moment
 * @param before the first moment that is too late
 */
public record ActivityFilter(
        @Nullable Long person,
        @Nullable String kind,
        @Nullable String subject,
        @Nullable Instant from,
        @Nullable Instant before) {

    /** Every line. */
    public static ActivityFilter all() {
        return new ActivityFilter(null, null, null, null, null);
    }
}
