package studio.stancebook.catalogue;

import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;

/**
 * Which packages are looked for; what is null does not limit.
 *
 * @param text part of the name, in any case; empty for all
 * @param segment the key of a segment
 * @param fromYear first model year, included
 * @param toYear last model year, included
 * @param measure only packages whose value of this measure is known and in range
 */
public record CatalogueFilter(
        String text,
        @Nullable String segment,
        @Nullable Integer fromYear,
        @Nullable Integer toYear,
        @Nullable Origin origin,
        @Nullable MeasureRange measure) {

    /** All packages. */
    public static CatalogueFilter all() {
        return new CatalogueFilter("", null, null, null, null, null);
    }

    /** All packages of a segment. */
    public static CatalogueFilter ofSegment(String segment) {
        return new CatalogueFilter("", segment, null, null, null, null);
    }

    /** The part of the name that is looked for, on one line and without blanks around it. */
    public String words() {
        return text.replaceAll("\\p{Cntrl}+", " ").strip();
    }
}
