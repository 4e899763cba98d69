package studio.stancebook.catalogue.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ValueLabels;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.Subject;

/** What recorded values and measures are called on pages. */
@Component
class ValueNames {

    private final StudioMeasures measures;

    ValueNames(StudioMeasures measures) {
        this.measures = measures;
    }

    /** The name of a dimension, landmark, polyline, tyre or measure; its key if it is none of these any more. */
    public String of(String key) {
        return ValueLabels.of(key)
                .or(() -> measures.current().find(key).map(Measure::name))
                .orElse(key);
    }

    /** Everything of a side view that can be set aside, by key: what is recorded, then what is measured. */
    Map<String, String> all(DimensionSet set) {
        Map<String, String> names = new LinkedHashMap<>();
        set.valueKeys().forEach(key -> names.put(key, of(key)));
        MeasureRegistry registry = measures.current();
        registry.valuesOf(new Subject(set)).forEach((measure, value) -> {
            if (value instanceof Measured) {
                names.put(measure.key(), measure.name());
            }
        });
        return names;
    }
}
