package studio.stancebook.dimension;

/** The units in which values are kept. */
public enum Unit {
    MM("mm"),
    DEG("°"),
    KG("kg"),
    COUNT("");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** The symbol written after a number; empty for a count. */
    public String symbol() {
        return symbol;
    }
}
