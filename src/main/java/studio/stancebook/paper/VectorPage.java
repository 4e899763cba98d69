package studio.stancebook.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One drawing on one sheet of paper.
 *
 * @param title of the file
 * @param description in words
 * @param widthMm of the paper
 * @param heightMm of the paper
 * @param ground colour of the paper as {@code #rrggbb}; null for the paper's own
 * @param groups in the order in which they are drawn and read
 */
public record VectorPage(
        String title,
        String description,
        double widthMm,
        double heightMm,
        @Nullable String ground,
        List<Group> groups) {

    public VectorPage {
        title = Writable.text(title);
        description = Writable.text(description);
        groups = List.copyOf(groups);
    }

    /** The same on paper of a colour, for a screen that brings none of its own. */
    public VectorPage on(String colour) {
        return new VectorPage(title, description, widthMm, heightMm, colour, groups);
    }
}
