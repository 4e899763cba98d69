package studio.stancebook.catalogue;

import org.jspecify.annotations.Nullable;

/**
 * Something that does not count in the class of a segment: a package, or one value of it.
 *
 * @param valueKey the dimension or measure; null for the whole package
 */
public record SetAsideView(
        long packageId, String packageName, @Nullable String valueKey, SetAside setAside) {}
