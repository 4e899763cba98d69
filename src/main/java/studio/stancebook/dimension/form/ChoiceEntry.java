package studio.stancebook.dimension.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One list to pick from.
 *
 * @param name of the parameter
 * @param label in the trade's words; the key of a message where {@code words} says so
 * @param choices in the order shown
 * @param error what is wrong with it; null when nothing is
 */
public record ChoiceEntry(
        String name,
        String label,
        List<Choice> choices,
        @Nullable String error) {

    public ChoiceEntry {
        choices = List.copyOf(choices);
    }

    /**
     * One thing to pick.
     *
     * @param value what the parameter then holds
     * @param label in words
     * @param chosen whether it is picked
     */
    public record Choice(String value, String label, boolean chosen) {}

    /** The identifier of the list in its page. */
    public String id() {
        return name.replace('.', '-');
    }

    public boolean wrong() {
        return error != null;
    }
}
