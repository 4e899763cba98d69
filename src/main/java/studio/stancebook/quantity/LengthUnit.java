package studio.stancebook.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;

/** The units in which people read and type lengths; kept are millimetres alone. */
public enum LengthUnit {
    MM("mm", 1),
    INCH("in", LengthUnit.MM_PER_INCH);

    /** Exact by definition (international inch). */
    public static final double MM_PER_INCH = 25.4;

    /** 0.01 in is a quarter of a millimetre: as fine as whole millimetres are. */
    private static final int INCH_DECIMALS = 2;

    private final String symbol;
    private final double mm;

    LengthUnit(String symbol, double mm) {
        this.symbol = symbol;
        this.mm = mm;
    }

    /** The unit of a symbol, {@code mm} or {@code in}. */
    public static Optional<LengthUnit> ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }

    public String symbol() {
        return symbol;
    }

    /** A length in this unit. */
    public double of(double lengthMm) {
        return lengthMm / mm;
    }

    /**
     * "1000 to 6000 mm": a range of lengths of which both ends, typed as they are written, lie within it. Where an end cannot
     * be written exactly it is the nearest one inside.
     */
    public String range(Interval mm, int decimalsOfMm) {
        return end(mm.lower(), decimalsOfMm, RoundingMode.CEILING) + " to "
                + end(mm.upper(), decimalsOfMm, RoundingMode.FLOOR) + " " + symbol;
    }

    private String end(double lengthMm, int decimalsOfMm, RoundingMode inwards) {
        if (this == MM) {
            return NumberText.plain(lengthMm, decimalsOfMm);
        }
        return BigDecimal.valueOf(lengthMm)
                .divide(BigDecimal.valueOf(MM_PER_INCH), INCH_DECIMALS, inwards)
                .toPlainString();
    }

    /**
     * As many decimals as say no less than a number of them in millimetres: two for whole millimetres and for those with one
     * or two decimals, beyond that one more than there.
     */
    public int decimals(int decimalsOfMm) {
        if (this == MM) {
            return decimalsOfMm;
        }
        return decimalsOfMm <= INCH_DECIMALS ? INCH_DECIMALS : decimalsOfMm + 1;
    }
}
