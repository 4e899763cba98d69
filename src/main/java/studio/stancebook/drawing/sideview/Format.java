package studio.stancebook.drawing.sideview;

/** The three ways in which a side view is laid out. */
enum Format {
    /** For a page from 860 px wide: everything, lettering of 12.5 px at that width. */
    WIDE(12.5 / 860),
    /** For a page from 320 px wide: codes and counts only, lettering of 12 px at that width; the figures are in a table. */
    NARROW(12.0 / 320),
    /** For a list: the vehicle alone. */
    THUMBNAIL(0.05);

    private final double emShare;

    Format(double emShare) {
        this.emShare = emShare;
    }

    /** Height of the lettering as a share of the width of the sheet. */
    double emShare() {
        return emShare;
    }

    int decimals() {
        return this == THUMBNAIL ? 0 : 1;
    }
}
