package studio.stancebook.catalogue.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
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
        return Dimension.ofKey(key)
                .map(Dimension::label)
                .or(() -> Landmark.ofKey(key).map(Landmark::label))
                .or(() -> Polyline.ofKey(key).map(Polyline::label))
                .or(() -> tyre(key))
                .or(() -> measures.current().find(key).map(Measure::name))
                .orElse(key);
    }

    private static Optional<String> tyre(String key) {
        for (Axle axle : Axle.values()) {
            if (axle.tyreKey().equals(key)) {
                return Optional.of(axle == Axle.FRONT ? "Front tyre" : "Rear tyre");
            }
        }
        return Optional.empty();
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
