package studio.stancebook.drawing.sideview;

/**
 * One number of the companion table of a drawing.
 *
 * @param code of SAE J1100; empty where there is none
 * @param name in the trade's words
 * @param value in the unit of the row; empty in an unscaled sketch
 * @param unit symbol
 * @param wheels the same in tyre diameters; empty where that says nothing
 * @param mark {@code outside}, {@code too-close} or empty
 */
public record Figure(String code, String name, String value, String unit, String wheels, String mark) {

    /** The value with its unit. */
    public String amount() {
        return unit.equals("°") ? value + unit : (value + " " + unit).strip();
    }

    public boolean marked() {
        return !mark.isEmpty();
    }
}
