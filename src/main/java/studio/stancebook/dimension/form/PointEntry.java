package studio.stancebook.dimension.form;

import org.jspecify.annotations.Nullable;

/**
 * The two inputs of a landmark.
 *
 * @param label of the landmark
 * @param x its place behind the front wheel centre
 * @param z its height over the ground
 * @param error what is wrong with the point as a whole; null when nothing is
 */
public record PointEntry(
        String label, Entry x, Entry z, @Nullable String error) {

    /** The identifier of the message in its page. */
    public String errorId() {
        return x.id() + "-point-error";
    }

    boolean filled() {
        return !x.value().isEmpty() || !z.value().isEmpty();
    }

    public boolean wrong() {
        return error != null || x.wrong() || z.wrong();
    }
}
