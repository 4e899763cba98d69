package studio.stancebook.activity;

import org.jspecify.annotations.Nullable;

/**
 * One thing that an event changed.
 *
 * @param field its name
 * @param from what it was; null when there was nothing
 * @param to what it is; null when there is nothing any more
 */
public record FieldChange(
        String field, @Nullable String from, @Nullable String to) {}
