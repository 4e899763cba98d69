package studio.stancebook.catalogue.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.dimension.Origin;

/**
 * What the form for a package offers to choose from.
 *
 * @param segments names by key
 * @param origins words by key
 */
record PackageChoices(Map<String, String> segments, Map<String, String> origins) {

    static PackageChoices of(List<SegmentView> all) {
        Map<String, String> segments = new LinkedHashMap<>();
        all.forEach(segment -> segments.put(segment.key(), segment.name()));
        Map<String, String> origins = new LinkedHashMap<>();
        for (Origin origin : Origin.values()) {
            origins.put(origin.key(), origin.label());
        }
        return new PackageChoices(segments, origins);
    }

    /** Public because the page asks. */
    public boolean none() {
        return segments.isEmpty();
    }
}
