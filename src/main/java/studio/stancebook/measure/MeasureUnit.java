package studio.stancebook.measure;

/** The units of measures. */
public enum MeasureUnit {
    RATIO("ratio", ""),
    DEG("deg", "°"),
    SQUARE_METRES("m2", "m²");

    private final String key;
    private final String symbol;

    MeasureUnit(String key, String symbol) {
        this.key = key;
        this.symbol = symbol;
    }

    /** The name in JSON. */
    public String key() {
        return key;
    }

    /** The symbol written after a number; empty for a ratio. */
    public String symbol() {
        return symbol;
    }
}
