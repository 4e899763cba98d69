package studio.stancebook.activity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is so of a thing, by name, in the order of adding; for {@link ActivityEvent}. */
public final class FieldValues {

    private final Map<String, String> all = new LinkedHashMap<>();

    private FieldValues() {}

    public static FieldValues none() {
        return new FieldValues();
    }

    /** One fact to begin with. */
    public static FieldValues of(String name, @Nullable Object value) {
        return none().and(name, value);
    }

    /** Adds a fact; null and the empty text are none. */
    public FieldValues and(String name, @Nullable Object value) {
        if (value != null && !value.toString().isEmpty()) {
            all.put(name, value.toString());
        }
        return this;
    }

    /** Adds facts. */
    public FieldValues and(Map<String, ?> more) {
        more.forEach(this::and);
        return this;
    }

    /** The facts in their order. */
    public Map<String, String> all() {
        return copy(all);
    }

    static Map<String, String> copy(Map<String, String> facts) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }
}
