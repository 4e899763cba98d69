package studio.stancebook.dimension;

import java.util.List;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/**
 * Values of one set that contradict each other: one that was recorded twice, or an impossible order.
 *
 * @param keys the JSON names of all values involved, the one that is compared first
 * @param gap by how much it does not close: recorded less what the other values give
 * @param message a sentence with the values, the gap and what is allowed
 */
public record Disagreement(List<String> keys, double gap, String message) {

    public Disagreement {
        keys = List.copyOf(keys);
    }

    /**
     * A value that the other values do not confirm.
     *
     * @param label what is compared, in words
     * @param allowed how far apart the two may be: twice their joint standard uncertainty, at least the floor
     * @param amounts how values of its unit are written
     */
    static Disagreement notClosing(
            List<String> keys, String label, double recorded, double derived, double allowed, UnitAmounts amounts) {
        double gap = recorded - derived;
        return new Disagreement(
                keys,
                gap,
                label + " is " + amounts.text(recorded) + ", but " + ValueLabels.listed(keys.subList(1, keys.size()))
                        + (keys.size() > 2 ? " give " : " gives ") + amounts.text(derived)
                        + ": it does not close by " + amounts.text(Math.abs(gap)) + ", and " + amounts.text(allowed)
                        + " is allowed.");
    }

    /**
     * A value on the wrong side of a limit that the other values set.
     *
     * @param rule what must hold, with the limit's name, such as "must not be above the free radius"
     */
    static Disagreement beyond(
            List<String> keys,
            String label,
            double recorded,
            String rule,
            double limit,
            double allowed,
            UnitAmounts amounts) {
        return new Disagreement(
                keys,
                recorded - limit,
                label + " is " + amounts.text(recorded) + ": it " + rule + ", " + amounts.text(limit)
                        + (allowed > 0 ? ", by more than " + amounts.text(allowed) : "") + ".");
    }

    /** How values of a unit are written: a sketch without dimensions has no unit of length, and small numbers. */
    record UnitAmounts(Unit unit, boolean sketch) {

        static UnitAmounts of(Unit unit, Scale scale) {
            return new UnitAmounts(unit, unit == Unit.MM && scale == Scale.UNSCALED);
        }

        String text(double value) {
            if (sketch) {
                return NumberText.plain(value, 3);
            }
            return unit == Unit.MM ? ShownUnits.text(value, 1) : NumberText.plain(value, 1) + unit.symbol();
        }
    }
}
