package studio.stancebook.exchange.mapping;

import org.jspecify.annotations.Nullable;

/**
 * What a column probably holds.
 *
 * @param unit null when the target takes one and neither heading nor cells tell which
 */
public record Guess(Target target, @Nullable ColumnUnit unit) {}
