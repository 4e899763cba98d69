package studio.stancebook.catalogue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;

/**
 * A benchmark package with all that belongs to it.
 *
 * @param version counts its changes
 * @param segment the key of its segment
 * @param dimensions with who set each value and when
 * @param setAside that it does not count in its class; null when it counts
 * @param valuesSetAside the dimensions and measures of it that do not count, by key
 * @param queries all questions, open and settled, oldest first
 */
public record PackageView(
        long id,
        long version,
        String name,
        String segment,
        String segmentName,
        @Nullable Integer modelYear,
        Origin origin,
        DimensionSet dimensions,
        @Nullable SetAside setAside,
        Map<String, SetAside> valuesSetAside,
        List<PackageIssue> queries,
        Instant createdAt,
        String createdBy,
        Instant changedAt,
        String changedBy) {

    public PackageView {
        valuesSetAside = Map.copyOf(valuesSetAside);
        queries = List.copyOf(queries);
    }

    /** The questions that nobody has answered yet. */
    public List<PackageIssue> openQueries() {
        return queries.stream().filter(PackageIssue::open).toList();
    }

    /** Its name, with the model year where it has one. */
    public String title() {
        return modelYear == null ? name : name + " (" + modelYear + ")";
    }

    /** What no other package shares. */
    public PackageName packageName() {
        return new PackageName(name, segment, modelYear);
    }
}
