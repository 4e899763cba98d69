package studio.stancebook.catalogue;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is to be set aside of a package that was just brought in.
 *
 * @param reason why the package does not count in its class; null when it counts
 * @param valueReasons why single values do not count, by their keys
 */
public record AsideDraft(long packageId, @Nullable String reason, Map<String, String> valueReasons) {

    public AsideDraft {
        valueReasons = Map.copyOf(valueReasons);
    }
}
