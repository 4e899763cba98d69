package studio.stancebook.paper;

import org.jspecify.annotations.Nullable;

/** Something on a plate. */
public sealed interface Mark {

    /** A path in an ink. */
    record Trace(Path path, Ink ink) implements Mark {}

    /**
     * A line of text.
     *
     * @param xMm of its anchor
     * @param yMm of its base line
     * @param sizeMm height of the lettering (1 em)
     * @param strong in the strong weight
     * @param colour as {@code #rrggbb}
     * @param ground colour that keeps lines behind it away; null to let them through
     */
    record Writing(
            double xMm,
            double yMm,
            Anchor anchor,
            double sizeMm,
            boolean strong,
            String colour,
            @Nullable String ground,
            String text)
            implements Mark {

        public Writing {
            text = Writable.text(text);
        }
    }
}
