package studio.stancebook.catalogue;

import java.time.Instant;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;

/**
 * A benchmark package as a list shows it.
 *
 * @param segment the key of its segment
 * @param dimensions reads what is recorded, which most lists do not show
 * @param setAside true when it does not count in its class
 * @param openQueries how many questions nobody has answered yet
 * @param shown the value of the measure that was searched by
 */
public record PackageSummary(
        long id,
        long version,
        String name,
        String segment,
        String segmentName,
        @Nullable Integer modelYear,
        Origin origin,
        Supplier<DimensionSet> dimensions,
        boolean setAside,
        int openQueries,
        OptionalDouble shown,
        Instant changedAt,
        String changedBy) {}
