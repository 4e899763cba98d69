package studio.stancebook.catalogue.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.PackageIssue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SetAside;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.measure.MeasureRegistry;

/**
 * A package as it is answered.
 *
 * @param measures every measure by its key: its value, or what is missing for it
 * @param recorded who set each value, and when
 * @param setAside that it does not count in its class; null when it counts
 * @param valuesSetAside the single values that do not count in its class
 */
record PackageAnswer(
        long id,
        long version,
        String name,
        String segment,
        @Nullable Integer modelYear,
        String origin,
        Map<String, Object> dimensions,
        Map<String, MeasureAnswer> measures,
        Map<String, Object> recorded,
        @JsonInclude @Nullable SetAside setAside,
        Map<String, SetAside> valuesSetAside,
        List<PackageIssue> queries,
        Instant createdAt,
        String createdBy,
        Instant changedAt,
        String changedBy) {

    static PackageAnswer of(PackageView view, MeasureRegistry registry) {
        return new PackageAnswer(
                view.id(),
                view.version(),
                view.name(),
                view.segment(),
                view.modelYear(),
                view.origin().key(),
                DimensionJson.write(view.dimensions()),
                MeasureAnswer.all(view.dimensions(), registry),
                DimensionJson.writeRecorded(view.dimensions()),
                view.setAside(),
                new LinkedHashMap<>(view.valuesSetAside()),
                view.queries(),
                view.createdAt(),
                view.createdBy(),
                view.changedAt(),
                view.changedBy());
    }
}
