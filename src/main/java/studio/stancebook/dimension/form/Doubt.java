package studio.stancebook.dimension.form;

/**
 * How well one value is known.
 *
 * @param label of the value
 * @param uncertainty the standard uncertainty, in the value's unit
 * @param origin where it comes from
 */
public record Doubt(String label, Entry uncertainty, ChoiceEntry origin) {

    /** True when something is typed or picked here. */
    public boolean used() {
        return !uncertainty.value().isEmpty()
                || origin.choices().stream()
                        .anyMatch(choice -> choice.chosen() && !choice.value().isEmpty());
    }

    /** True when something is wrong here, so that it must be seen. */
    public boolean wrong() {
        return uncertainty.wrong() || origin.wrong();
    }
}
