package studio.stancebook.dimension;

import java.util.Set;
import studio.stancebook.quantity.AngleReference;
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

    /** Whether a dimension or a measure is such an angle. */
    public static boolean has(String key) {
        return KEYS.contains(key);
    }

    /** Whether the values of a dimension or a measure are written from the vertical. */
    public static boolean turned(String key) {
        return has(key) && ShownUnits.current().angles() == AngleReference.VERTICAL;
    }

    /** A value as it is written. */
    public static double value(String key, double value) {
        return turned(key) ? AngleReference.VERTICAL.of(value) : value;
    }

    /** A change of a value as it is written. */
    public static double change(String key, double change) {
        return turned(key) ? -change : change;
    }

    /** The name or the definition, which say what the angle is read from. */
    public static String words(String key, String words) {
        return turned(key) ? words.replace(KEPT, "from the vertical").replace("low is fast", "high is fast") : words;
    }
}
