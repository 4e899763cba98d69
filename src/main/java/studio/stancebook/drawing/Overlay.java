package studio.stancebook.drawing;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.Malformed;

/** A layer of a side view that can be switched off; the vehicle and the ground stay. */
public enum Overlay {
    RULERS("ruler"),
    WEDGES("wedges"),
    DIMENSIONS("dimensions"),
    GHOSTS("ghosts");

    /** What a form sends besides the layers, so that none of them is not the same as nothing said. */
    public static final String VEHICLE = "vehicle";

    private final String cls;

    Overlay(String clsOfItsLines) {
        this.cls = clsOfItsLines;
    }

    /** The name in addresses. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a layer of a sheet belongs to this. */
    boolean has(Layer layer) {
        return layer.cls().equals("side-view__" + cls) || layer.cls().endsWith("-words--" + cls);
    }

    /** The class of the group of its words. */
    public String wordsCls() {
        return "side-view__words side-view__overlay-words--" + cls;
    }

    /**
     * The layers asked for.
     *
     * @param keys names of layers, or {@code vehicle} for none; null for all
     * @throws Malformed if there is no such layer
     */
    public static Set<Overlay> of(@Nullable List<String> keys) {
        Set<Overlay> found = EnumSet.noneOf(Overlay.class);
        for (String key : keys == null ? List.<String>of() : keys) {
            if (!key.equals(VEHICLE)) {
                found.add(ofKey(key));
            }
        }
        return keys == null ? Collections.unmodifiableSet(EnumSet.allOf(Overlay.class)) : found;
    }

    private static Overlay ofKey(String key) {
        return Arrays.stream(values())
                .filter(overlay -> overlay.key().equals(key))
                .findFirst()
                .orElseThrow(() -> Malformed.ofField(
                        "layers", "A layer is one of " + keys() + " or " + VEHICLE + " for none, not " + key + "."));
    }

    private static String keys() {
        return Arrays.stream(values()).map(Overlay::key).collect(Collectors.joining(", "));
    }
}
