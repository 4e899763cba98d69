package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All measures in the order in which they are shown: those that every studio has, then the studio's own ratios. A value;
 * StudioMeasures hands out the present one.
 */
public final class MeasureRegistry {

    private static final MeasureRegistry BUILT_IN = new MeasureRegistry(Measures.builtIn());

    /** Measures that say the same as another in other words: L101 / D + 1, and 1 - 2 x the sidewall's share. */
    private static final Map<String, String> REPEATS = Map.of(
            "wheels-spanned",
            "wheelbase-in-wheels",
            "rim-share",
            "sidewall-share",
            "rear-rim-share",
            "rear-sidewall-share");

    private final Map<String, Measure> byKey = new LinkedHashMap<>();

    private MeasureRegistry(List<Measure> measures) {
        measures.forEach(measure -> byKey.put(measure.key(), measure));
        if (byKey.size() != measures.size()) {
            throw new IllegalArgumentException("Two measures have the same key");
        }
    }

    /** The measures of this program alone. */
    public static MeasureRegistry builtIn() {
        return BUILT_IN;
    }

    /** The measures of this program and a studio's own ratios. */
    public static MeasureRegistry with(List<StudioRatio> ratios) {
        List<Measure> all = new ArrayList<>(Measures.builtIn());
        ratios.forEach(ratio -> all.add(ratio.measure()));
        return new MeasureRegistry(all);
    }

    /**
     * The key under which a measure counts where measures are counted or combined: the one that it repeats, which is the same
     * to a linear function, else its own. Studio decision 0088.
     */
    public static String countedAs(String key) {
        return REPEATS.getOrDefault(key, key);
    }

    public List<Measure> all() {
        return List.copyOf(byKey.values());
    }

    public Optional<Measure> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** @throws UnknownMeasure if there is none of this key */
    public Measure get(String key) {
        return find(key).orElseThrow(() -> new UnknownMeasure(key));
    }

    /** Every measure's value for a side view, in the order of {@link #all()}. */
    public Map<Measure, MeasureValue> valuesOf(Subject subject) {
        Map<Measure, MeasureValue> values = new LinkedHashMap<>();
        byKey.values().forEach(measure -> values.put(measure, measure.of(subject)));
        return values;
    }
}
