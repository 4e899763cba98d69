package studio.stancebook.proposal.web;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/** Changes and times as pages write them. */
final class Amounts {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);

    private Amounts() {}

    /** To the minute, in UTC. */
    static String time(Instant at) {
        return MINUTE.format(at);
    }

    /** With a sign that is as wide as a plus, to two figures or to whole units. */
    static String signed(double change, Unit unit, boolean unscaled) {
        return (change > 0 ? "+" : "\u2212") + size(change, unit, unscaled);
    }

    /** Without a sign. */
    static String size(double change, Unit unit, boolean unscaled) {
        if (unit == Unit.MM && !unscaled && ShownUnits.current().length() == LengthUnit.INCH) {
            double inches = LengthUnit.INCH.of(Math.abs(change));
            return NumberText.fixed(inches, inches >= 0.1 ? 2 : 4) + "\u00a0" + LengthUnit.INCH.symbol();
        }
        String number = NumberText.fixed(Math.abs(change), decimals(Math.abs(change), unit));
        return unscaled && unit == Unit.MM ? number : number + symbol(unit);
    }

    /** As {@link #size}, rounded up: a change that is made as it is written reaches at least as far. */
    static String reaching(double change, Unit unit, boolean unscaled) {
        boolean inches = unit == Unit.MM && !unscaled && ShownUnits.current().length() == LengthUnit.INCH;
        double size = inches ? LengthUnit.INCH.of(Math.abs(change)) : Math.abs(change);
        double step = Math.pow(10, -(inches ? size >= 0.1 ? 2 : 4 : decimals(size, unit)));
        double up = Math.ceil(size / step - 1e-6) * step;
        return size(inches ? up * LengthUnit.MM_PER_INCH : up, unit, unscaled);
    }

    /** As {@link #reaching}, with a sign. */
    static String signReaching(double change, Unit unit, boolean unscaled) {
        return (change > 0 ? "+" : "\u2212") + reaching(change, unit, unscaled);
    }

    private static int decimals(double size, Unit unit) {
        if (unit == Unit.DEG) {
            return size >= 0.05 ? 1 : 3;
        }
        return size >= 10 ? 0 : size >= 1 ? 1 : size >= 0.1 ? 2 : 4;
    }

    private static String symbol(Unit unit) {
        return unit == Unit.DEG ? unit.symbol() : "\u00a0" + unit.symbol();
    }
}
