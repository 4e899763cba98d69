package studio.stancebook.review;

import org.jspecify.annotations.Nullable;

/**
 * One thing that a deed changed.
 *
 * @param field its name
 * @param from what it was; null when there was nothing
 * @param to what it is; null when there is nothing any more
 */
public record Change(
        String field, @Nullable String from, @Nullable String to) {}
