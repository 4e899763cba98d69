package studio.stancebook.dimension.form;

import org.jspecify.annotations.Nullable;

/**
 * One input of the form.
 *
 * @param name of the parameter
 * @param label in the trade's words
 * @param code of SAE J1100; empty where there is none
 * @param unit in which a bare number counts; empty where there is none
 * @param hint what is accepted; empty where there is nothing to say
 * @param value the text in it
 * @param error what is wrong with it; null when nothing is
 */
public record Entry(
        String name,
        String label,
        String code,
        String unit,
        String hint,
        String value,
        @Nullable String error) {

    /** The identifier of the input in its page. */
    public String id() {
        return name.replace('.', '-');
    }

    /** The label with the unit, where the two stand together. */
    public String labelAndUnit() {
        return unit.isEmpty() ? label : label + ", " + unit;
    }

    public boolean wrong() {
        return error != null;
    }
}
