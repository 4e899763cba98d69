package studio.stancebook.classes;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.Malformed;

/**
 * Which packages of a segment make up a class; those set aside never do.
 *
 * @param fromYear first model year, included; null for no limit
 * @param toYear last model year, included; null for no limit. With either limit a package without a year is left out
 * @param origins the origins that count
 */
public record ClassFilter(
        @Nullable Integer fromYear, @Nullable Integer toYear, Set<Origin> origins) {

    private static final ClassFilter ALL = new ClassFilter(null, null, EnumSet.allOf(Origin.class));

    /** @throws Malformed if the first year comes after the last */
    public ClassFilter {
        origins = Set.copyOf(origins);
        if (fromYear != null && toYear != null && fromYear > toYear) {
            throw Malformed.ofField(
                    "fromYear", "The years run from " + fromYear + " to " + toYear + ": the first must not be later.");
        }
    }

    /** Everything that is not set aside. */
    public static ClassFilter all() {
        return ALL;
    }

    /** True when nothing is left out. */
    public boolean takesAll() {
        return fromYear == null && toYear == null && origins.size() == Origin.values().length;
    }

    /**
     * Whether a package counts.
     *
     * @param modelYear 0 where it has none
     * @param origin the ordinal of its origin
     */
    public boolean takes(int modelYear, int origin) {
        boolean unlimited = fromYear == null && toYear == null;
        boolean inTime =
                modelYear > 0 && (fromYear == null || fromYear <= modelYear) && (toYear == null || modelYear <= toYear);
        return (unlimited || inTime) && origins.contains(Origin.values()[origin]);
    }
}
