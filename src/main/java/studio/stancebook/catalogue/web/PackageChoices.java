package studio.stancebook.catalogue.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.dimension.Origin;

/**
 * What the form for a package offers to choose from.
 *
 * @param segments names by key; first '' for none, unless there are no segments
 * @param origins words by key
 */
record PackageChoices(Map<String, String> segments, Map<String, String> origins) {

    /** @param choose words for a segment that is not chosen yet */
    static PackageChoices of(List<SegmentView> all, String choose) {
        Map<String, String> segments = new LinkedHashMap<>();
        if (!all.isEmpty()) {
            segments.put("", choose);
        }
        all.forEach(segment -> segments.put(segment.key(), segment.name()));
        return new PackageChoices(segments, sources());
    }

    /** Words of each source of values, by key. */
    static Map<String, String> sources() {
        Map<String, String> origins = new LinkedHashMap<>();
        for (Origin origin : Origin.values()) {
            origins.put(origin.key(), origin.label());
        }
        return origins;
    }

    /** Public because the page asks. */
    public boolean none() {
        return segments.isEmpty();
    }
}
