package studio.stancebook.catalogue;

import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;

/**
 * Something that does not count in the class of a segment: a package, or one value of it.
 *
 * @param valueKey the dimension or measure; null for the whole package
 * @param reason why, in words
 * @param by who set it aside
 */
public record SetAsideView(
        long packageId, String packageName, @Nullable String valueKey, String reason, Author by) {}
