package studio.stancebook.problem;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is wrong with a form, for the page that shows it again.
 *
 * @param all those that are listed, in the order in which they are to be told
 * @param count how many there are
 */
public record FieldErrors(List<FieldError> all, int count) {

    private static final FieldErrors NONE = new FieldErrors(List.of());

    public FieldErrors {
        all = List.copyOf(all);
    }

    public FieldErrors(List<FieldError> all) {
        this(all, all.size());
    }

    /** Nothing is wrong. */
    public static FieldErrors none() {
        return NONE;
    }

    /**
     * What a refusal objects to. One that names no field is told of the field given.
     *
     * @param otherwise the field to which a refusal of the whole is best tied
     */
    public static FieldErrors of(Refusal refusal, String otherwise) {
        return refusal.errors().isEmpty()
                ? new FieldErrors(List.of(new FieldError(otherwise, refusal.detail())))
                : new FieldErrors(refusal.errors(), refusal.errorCount());
    }

    public boolean any() {
        return !all.isEmpty();
    }

    /** How many are not listed. */
    public int more() {
        return count - all.size();
    }

    /** What is wrong with a field, several objections in one line; null if nothing is. */
    public @Nullable String on(String field) {
        String messages = String.join(
                " ",
                all.stream()
                        .filter(error -> error.field().equals(field))
                        .map(FieldError::message)
                        .toList());
        return messages.isEmpty() ? null : messages;
    }
}
