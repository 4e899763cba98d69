package studio.stancebook.compare;

import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;

/**
 * One of those that are compared.
 *
 * @param name with the model year or the revision
 * @param segment the key of its segment
 * @param revision the number of a proposal's revision; null for a package
 */
public record Compared(
        Pick pick,
        String name,
        String segment,
        String segmentName,
        @Nullable Integer revision,
        DimensionSet dimensions) {}
