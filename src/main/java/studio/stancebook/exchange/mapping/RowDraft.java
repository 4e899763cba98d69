package studio.stancebook.exchange.mapping;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;

/**
 * A package as a file has it, before the catalogue is asked.
 *
 * @param segment the key or the name of its segment, as written
 * @param segmentName the words for its segment if it has to be made; empty for those in {@code segment}
 * @param setAside the reason why it does not count in its class; null when it counts
 * @param valuesSetAside the reasons why single values do not count, by their keys
 * @param queries open questions that it brings with it
 * @param named those of origin, scale and edition that the file names, and that are not taken for granted
 */
public record RowDraft(
        String name,
        String segment,
        String segmentName,
        @Nullable Integer modelYear,
        Origin origin,
        DimensionSet dimensions,
        @Nullable String setAside,
        Map<String, String> valuesSetAside,
        List<String> queries,
        Set<Field> named) {

    public RowDraft {
        valuesSetAside = Map.copyOf(valuesSetAside);
        queries = List.copyOf(queries);
        named = Set.copyOf(named);
    }
}
