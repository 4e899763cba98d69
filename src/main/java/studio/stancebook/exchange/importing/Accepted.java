package studio.stancebook.exchange.importing;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.PackageDraft;

/**
 * A row that comes in.
 *
 * @param row as a person counts
 * @param setAside the reason why the package does not count in its class; null when it counts
 * @param valuesSetAside the reasons why single values do not count, by their keys
 */
record Accepted(long row, PackageDraft draft, @Nullable String setAside, Map<String, String> valuesSetAside) {}
