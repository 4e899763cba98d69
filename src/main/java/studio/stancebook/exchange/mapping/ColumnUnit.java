package studio.stancebook.exchange.mapping;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import studio.stancebook.dimension.Unit;

/** The units that a column may be in; converted exactly in decimal and rounded once, to the nearest double. */
public enum ColumnUnit {
    MM("mm", Unit.MM, "1", "mm", "millimetre", "millimetres", "millimeters"),
    CM("cm", Unit.MM, "10", "cm", "centimetre", "centimetres", "centimeters"),
    M("m", Unit.MM, "1000", "m", "metre", "metres", "meters"),
    /** The international inch, 25.4 mm exactly. */
    IN("in", Unit.MM, "25.4", "in", "inch", "inches", "\"", "″", "in."),
    DEG("deg", Unit.DEG, "1", "deg", "°", "degree", "degrees"),
    /** For windscreen and backlight, which older forms measure from the vertical. */
    DEG_FROM_VERTICAL("deg-from-vertical", Unit.DEG, "1", "deg-from-vertical"),
    KG("kg", Unit.KG, "1", "kg"),
    /** The international pound, 0.45359237 kg exactly. */
    LB("lb", Unit.KG, "0.45359237", "lb", "lbs"),
    NONE("", Unit.COUNT, "1", "");

    private static final BigDecimal RIGHT_ANGLE_DEG = new BigDecimal(90);

    private final String key;
    private final Unit kept;
    private final BigDecimal factor;
    private final List<String> spellings;

    ColumnUnit(String key, Unit kept, String factor, String... spellings) {
        this.key = key;
        this.kept = kept;
        this.factor = new BigDecimal(factor);
        this.spellings = List.of(spellings);
    }

    /** The unit of a key in a mapping. */
    public static Optional<ColumnUnit> ofKey(String key) {
        return Arrays.stream(values()).filter(unit -> unit.key.equals(key)).findFirst();
    }

    /** The unit as people write it behind a number or in a heading, in any case. */
    static Optional<ColumnUnit> ofSpelling(String text) {
        String spelling = text.strip().toLowerCase(Locale.ROOT);
        return spelling.isEmpty()
                ? Optional.empty()
                : Arrays.stream(values())
                        .filter(unit -> unit.spellings.contains(spelling))
                        .findFirst();
    }

    /** The unit in which values of a kind are kept. */
    public static ColumnUnit natural(Unit kept) {
        return switch (kept) {
            case MM -> MM;
            case DEG -> DEG;
            case KG -> KG;
            case COUNT -> NONE;
        };
    }

    /** The units that can be converted to the one in which values are kept. */
    public static List<ColumnUnit> of(Unit kept) {
        return Arrays.stream(values()).filter(unit -> unit.kept == kept).toList();
    }

    /** The name in a mapping, such as {@code in}; empty for a count. */
    public String key() {
        return key;
    }

    /** The unit in which values of this one are kept. */
    public Unit kept() {
        return kept;
    }

    /** A number in this unit as it is kept: the double nearest to the exact product. */
    public double toKept(BigDecimal number) {
        return this == DEG_FROM_VERTICAL
                ? RIGHT_ANGLE_DEG.subtract(number).doubleValue()
                : number.multiply(factor).doubleValue();
    }
}
