package studio.stancebook.measure;

/** The order in which measures are shown. */
public enum MeasureGroup {
    WHEELS("Counted in wheels"),
    TYRES("Tyres"),
    SHARES("Shares of the body"),
    LINES("Lines and angles"),
    UNDERBODY("Underbody angles"),
    AREAS("Areas"),
    STUDIO("The studio's own ratios");

    private final String label;

    MeasureGroup(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
