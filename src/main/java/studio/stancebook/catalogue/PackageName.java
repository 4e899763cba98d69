package studio.stancebook.catalogue;

import org.jspecify.annotations.Nullable;

/**
 * What no two packages share.
 *
 * @param name the name of the package
 * @param segment the key of its segment
 * @param modelYear its model year, where it has one
 */
public record PackageName(
        String name, String segment, @Nullable Integer modelYear) {}
