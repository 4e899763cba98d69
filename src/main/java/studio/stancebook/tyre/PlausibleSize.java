package studio.stancebook.tyre;

import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;

/** Limits outside which a number in a tyre size is taken for a typing error (common practice, no source). */
final class PlausibleSize {

    private PlausibleSize() {}

    /** @throws IllegalArgumentException if {@code range} does not contain {@code value}; the message names both */
    static void require(String what, double value, Interval range, String unit) {
        if (!range.contains(value)) {
            throw new IllegalArgumentException(what + " " + with(unit, value) + " is not accepted, "
                    + NumberText.plain(range.lower(), 2) + " to " + with(unit, range.upper()) + " is");
        }
    }

    private static String with(String unit, double value) {
        String number = Double.isFinite(value) ? NumberText.plain(value, 3) : Double.toString(value);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
