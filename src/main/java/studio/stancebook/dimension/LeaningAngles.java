package studio.stancebook.dimension;

import java.util.Set;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.ShownUnits;

/**
 * Windscreen and backlight angles, which one half of the trade reads from the horizontal and the other from the vertical. They are
 * kept from the horizontal, and written as the person who asks reads them; the name always says from what.
 */
public final class LeaningAngles {

    /** Of the recorded dimensions, and of the measures of the same lines. */
    private static final Set<String> KEYS = Set.of("screenAngle", "backlightAngle", "screen-angle", "backlight-angle");

    private static final String KEPT = "from the horizontal";

    private LeaningAngles() {}

    /**
     * What the values of a dimension or a measure are written from.
     *
     * @param wanted by who reads or types it; holds for leaning angles alone
     */
    public static AngleReference reference(String key, AngleReference wanted) {
        return KEYS.contains(key) ? wanted : AngleReference.HORIZONTAL;
    }

    private static AngleReference reference(String key) {
        return reference(key, ShownUnits.current().angles());
    }

    /** Whether the values of a dimension or a measure are written from the vertical. */
    public static boolean turned(String key) {
        return reference(key) == AngleReference.VERTICAL;
    }

    /** A value as it is written. */
    public static double value(String key, double value) {
        return reference(key).of(value);
    }

    /** A range of values as it is written. */
    public static Interval range(String key, Interval range) {
        return reference(key).of(range);
    }

    /** A change of a value as it is written. */
    public static double change(String key, double change) {
        return turned(key) ? -change : change;
    }

    /** The name or the definition, which say what the angle is read from. */
    public static String words(String key, String words) {
        return words(key, words, ShownUnits.current().angles());
    }

    /** As {@link #words(String, String)}, by who reads or types it. */
    public static String words(String key, String words, AngleReference wanted) {
        return reference(key, wanted) == AngleReference.VERTICAL
                ? words.replace(KEPT, "from the vertical").replace("low is fast", "high is fast")
                : words;
    }
}
