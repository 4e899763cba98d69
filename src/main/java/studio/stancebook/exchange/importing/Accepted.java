package studio.stancebook.exchange.importing;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.RowProblem;

/**
 * A row that comes in.
 *
 * @param row as a person counts
 * @param setAside the reason why the package does not count in its class; null when it counts
 * @param valuesSetAside the reasons why single values do not count, by their keys
 * @param named those of origin, scale and edition that the row names
 * @param leftOut the queries about what could not be read
 */
record Accepted(
        long row,
        PackageDraft draft,
        @Nullable String setAside,
        Map<String, String> valuesSetAside,
        Set<Field> named,
        List<RowProblem> leftOut) {}
