package studio.stancebook.exchange.mapping;

import org.jspecify.annotations.Nullable;

/**
 * What one row gives.
 *
 * @param row its number
 * @param draft the package; null when an error keeps the row out
 * @param problems errors and queries so far
 */
public record RowReading(long row, @Nullable RowDraft draft, Problems problems) {}
