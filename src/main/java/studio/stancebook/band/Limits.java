package studio.stancebook.band;

import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.quantity.Interval;

/**
 * The decision rule of JCGM 106 with the coverage interval of twice the standard uncertainty: inside when the coverage
 * interval lies within the closed band, outside when it lies wholly beyond an edge, else undecided. Comparisons forgive
 * 1e-12 of the numbers compared, so that binary rounding does not tip a value that stands exactly on an edge.
 */
final class Limits {

    private static final double COVERAGE = 2;
    private static final double ROUNDING = 1e-12;

    private final Interval band;

    Limits(Interval band) {
        this.band = band;
    }

    boolean hold(double value, double uncertainty) {
        return notBelow(value - COVERAGE * uncertainty, band.lower())
                && notBelow(band.upper(), value + COVERAGE * uncertainty);
    }

    /** The side on which the whole coverage interval lies outside; empty when none. */
    Optional<Side> beyond(double value, double uncertainty) {
        if (!notBelow(value + COVERAGE * uncertainty, band.lower())) {
            return Optional.of(Side.LOW);
        }
        return notBelow(band.upper(), value - COVERAGE * uncertainty) ? Optional.empty() : Optional.of(Side.HIGH);
    }

    private static boolean notBelow(double value, double limit) {
        return value >= limit || limit - value <= ROUNDING * Math.max(Math.abs(value), Math.abs(limit));
    }

    double distance(Side side, double value) {
        return side == Side.LOW ? band.lower() - value : value - band.upper();
    }

    /** A distance as a share of the band's width; empty when it has none or is open to a side. */
    OptionalDouble inBandWidths(double distance) {
        double width = band.width();
        return Double.isFinite(width) && width > 0 ? OptionalDouble.of(distance / width) : OptionalDouble.empty();
    }
}
