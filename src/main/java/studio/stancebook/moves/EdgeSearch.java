package studio.stancebook.moves;

import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;

/**
 * Finds the change of one variable at which a measure takes a wanted value. Most measures are linear over linear in each
 * variable, y(d) = y0 + s d / (1 + c d); there the change follows in closed form from the value and slope now and one
 * further evaluation. Where that misses, as under an underbody of many edges, a bracket is searched in the direction of
 * the slope and narrowed by false position and bisection. A result is only given when evaluating the changed set gives
 * the wanted value to 1e-9, relative to the larger of the value and its distance now.
 */
final class EdgeSearch {

    private static final double ACCURACY = 1e-9;
    private static final int CLOSED_FORM_STEPS = 4;
    private static final int HALVINGS = 12;
    private static final int BRACKET_STEPS = 60;
    private static final int NARROWING_STEPS = 150;

    private final Measure measure;
    private final MoveRange range;
    private final double wanted;
    private final double offset;
    private final double slope;
    private final double tolerance;

    /**
     * @param range says which changes are plausible
     * @param now the measure's value without a change
     * @param slope its change per unit of the variable, not zero
     * @param wanted other than {@code now}
     */
    EdgeSearch(Measure measure, MoveRange range, double now, double slope, double wanted) {
        this.measure = measure;
        this.range = range;
        this.wanted = wanted;
        this.offset = now - wanted;
        this.slope = slope;
        this.tolerance = ACCURACY * Math.max(Math.abs(wanted), Math.abs(offset));
    }

    /** The change; empty when no plausible one reaches the wanted value. */
    OptionalDouble change() {
        OptionalDouble closed = inClosedForm();
        return closed.isPresent() ? closed : byBracket();
    }

    /** The value after a change less the wanted value; NaN where the measure has none or the change is not plausible. */
    private double miss(double change) {
        Optional<DimensionSet> moved = range.moved(change);
        return moved.isPresent() && measure.of(new Subject(moved.get())) instanceof Measured measured
                ? measured.value() - wanted
                : Double.NaN;
    }

    private boolean hits(double miss) {
        return Math.abs(miss) <= tolerance;
    }

    private OptionalDouble inClosedForm() {
        double change = firstProbe();
        for (int step = 0; step < CLOSED_FORM_STEPS && change != 0; step++) {
            double miss = miss(change);
            if (hits(miss)) {
                return OptionalDouble.of(change);
            }
            change = linearOverLinear(change, miss);
        }
        return OptionalDouble.empty();
    }

    /** The step along the slope, halved until it is plausible. */
    private double firstProbe() {
        double change = -offset / slope;
        for (int i = 0; i < HALVINGS && range.moved(change).isEmpty(); i++) {
            change /= 2;
        }
        return change;
    }

    /** The zero of the linear-over-linear function through the offset and slope now and the miss after a change. */
    private double linearOverLinear(double change, double miss) {
        double curve = (slope * change / (miss - offset) - 1) / change;
        double next = -offset / (slope + curve * offset);
        boolean beforeThePole = 1 + curve * next > 0;
        return beforeThePole ? next : Double.NaN;
    }

    private OptionalDouble byBracket() {
        double step = -offset / slope / 4;
        End near = new End(0, offset);
        for (int i = 0; i < BRACKET_STEPS && near.change() + step != near.change(); i++) {
            End far = at(near.change() + step);
            if (Double.isNaN(far.miss())) {
                step /= 2;
            } else if (near.miss() * far.miss() <= 0) {
                return narrowed(near, far);
            } else {
                near = far;
                step *= 1.5;
            }
        }
        return OptionalDouble.empty();
    }

    /** False position between two ends of opposite sign (Illinois), with a bisection at every third step. */
    private OptionalDouble narrowed(End from, End to) {
        End a = from;
        End b = to;
        for (int i = 0; i < NARROWING_STEPS; i++) {
            End middle = at(i % 3 == 2 ? (a.change() + b.change()) / 2 : crossing(a, b));
            if (hits(middle.miss())) {
                return middle.change() == 0 ? OptionalDouble.empty() : OptionalDouble.of(middle.change());
            }
            if (Double.isNaN(middle.miss()) || middle.change() == a.change() || middle.change() == b.change()) {
                return OptionalDouble.empty();
            }
            a = middle.miss() * b.miss() < 0 ? b : new End(a.change(), a.miss() / 2);
            b = middle;
        }
        return OptionalDouble.empty();
    }

    private static double crossing(End a, End b) {
        return b.change() - b.miss() * (b.change() - a.change()) / (b.miss() - a.miss());
    }

    private End at(double change) {
        return new End(change, miss(change));
    }

    private record End(double change, double miss) {}
}
