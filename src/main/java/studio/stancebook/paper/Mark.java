package studio.stancebook.paper;

import org.jspecify.annotations.Nullable;

/** Something on a page. */
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

        private static final double ASCENT_EM = 0.76;
        private static final double DESCENT_EM = 0.22;
        private static final double MARGIN_EM = 0.14;

        public Writing {
            text = Writable.text(text);
        }

        /** Where the words begin when they are so wide. */
        double left(double width) {
            return xMm
                    - switch (anchor) {
                        case START -> 0;
                        case MIDDLE -> width / 2;
                        case END -> width;
                    };
        }

        /** What covers the lines behind the words when they are so wide. */
        Path cover(double width) {
            return Path.rectangle(
                    left(width) - MARGIN_EM * sizeMm,
                    yMm - ASCENT_EM * sizeMm,
                    width + 2 * MARGIN_EM * sizeMm,
                    (ASCENT_EM + DESCENT_EM) * sizeMm);
        }
    }
}
