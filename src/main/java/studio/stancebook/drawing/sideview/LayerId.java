package studio.stancebook.drawing.sideview;

import java.util.Locale;

/** The layers from back to front. */
enum LayerId {
    GRID,
    WEDGES,
    RULER,
    GHOSTS,
    GUIDES,
    GROUND,
    DETAIL,
    BODY,
    WHEELS,
    MARKS,
    DIMENSIONS,
    WORDS;

    String cls() {
        return "side-view__" + name().toLowerCase(Locale.ROOT);
    }
}
