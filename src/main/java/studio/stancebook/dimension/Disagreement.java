package studio.stancebook.dimension;

import java.util.List;
import studio.stancebook.quantity.NumberText;

/**
 * A value that was recorded twice and does not agree with itself.
 *
 * @param keys the JSON names of all values involved, the one that is compared first
 * @param label what is compared, in words
 * @param recorded the recorded value
 * @param derived what the other values give
 * @param allowed how far apart the two may be: twice their joint standard uncertainty, at least the floor
 * @param unit of the three
 */
public record Disagreement(
        List<String> keys, String label, double recorded, double derived, double allowed, Unit unit) {

    public Disagreement {
        keys = List.copyOf(keys);
    }

    /** By how much it does not close: recorded less derived. */
    public double gap() {
        return recorded - derived;
    }

    /** A sentence with both values, the gap and what is allowed. */
    public String message() {
        String symbol = unit == Unit.DEG ? "°" : " " + unit.symbol();
        return label + " is " + text(recorded) + symbol + ", but " + String.join(", ", keys.subList(1, keys.size()))
                + (keys.size() > 2 ? " give " : " gives ") + text(derived) + symbol + ": it does not close by "
                + text(Math.abs(gap())) + symbol + ", and " + text(allowed) + symbol + " is allowed.";
    }

    private static String text(double value) {
        return NumberText.plain(value, 1);
    }
}
