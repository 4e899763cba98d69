package studio.stancebook.moves;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.dimension.Unit;
import studio.stancebook.dimension.Variable;
import studio.stancebook.problem.FieldError;

/** How far one variable of a dimension set may be moved before it is no longer plausible. */
final class MoveRange {

    /** No move is longer than this many times the wheelbase, or this many degrees, whatever the range allows. */
    private static final double LONGEST_IN_WHEELBASES = 2;

    private static final double LONGEST_DEG = 180;

    private final DimensionSet set;
    private final Variable variable;
    private final Set<FieldError> already;

    MoveRange(DimensionSet set, Variable variable) {
        this.set = set;
        this.variable = variable;
        this.already = new HashSet<>(RangeChecks.problemsOf(set));
    }

    private double longest() {
        return variable.unit() == Unit.DEG ? LONGEST_DEG : LONGEST_IN_WHEELBASES * wheelbase();
    }

    /** The changed set; empty when it breaks a plausible range that it did not break before. */
    Optional<DimensionSet> moved(double change) {
        if (!Double.isFinite(change) || Math.abs(change) > longest() || takesTheWheelbase(change)) {
            return Optional.empty();
        }
        DimensionSet moved = set.moved(variable, change);
        return already.containsAll(RangeChecks.problemsOf(moved)) ? Optional.of(moved) : Optional.empty();
    }

    /** The plausible ranges of all else are shares of the wheelbase: there are none without one. */
    private boolean takesTheWheelbase(double change) {
        return variable == Variable.of(Dimension.WHEELBASE) && wheelbase() + change <= 0;
    }

    /** The size of a change, as {@link SingleMove#share()} says. */
    double share(double change) {
        return Math.abs(change) / reference();
    }

    private double reference() {
        double own = Math.abs(recorded());
        return own > 0 && variable != Variable.of(Dimension.DASH_TO_AXLE) ? own : wheelbase();
    }

    /** The recorded scalar, 0 for a coordinate. */
    private double recorded() {
        for (Axle axle : Axle.values()) {
            if (variable == Variable.TYRE_DIAMETER || variable == Variable.of(axle.tyreDiameter())) {
                return set.tyreDiameter(axle).orElse(0);
            }
        }
        return Dimension.ofKey(variable.key())
                .map(dimension -> set.scalar(dimension).orElse(0))
                .orElse(0.0);
    }

    private double wheelbase() {
        return set.scalar(Dimension.WHEELBASE).orElseThrow();
    }
}
