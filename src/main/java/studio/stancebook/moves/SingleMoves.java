package studio.stancebook.moves;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Variable;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;
import studio.stancebook.quantity.Interval;

/** The single moves that bring a measure to a wanted value. */
public final class SingleMoves {

    private final Measure measure;
    private final DimensionSet set;
    private final Measured now;

    private SingleMoves(Measure measure, DimensionSet set, Measured now) {
        this.measure = measure;
        this.set = set;
        this.now = now;
    }

    /**
     * One move for each variable that the measure depends on, where there is one within the plausible range of what is
     * moved; the relatively smallest first. The value after the move is the wanted one to 1e-9 relative.
     *
     * @param set the side view
     * @param now the measure's value for it
     * @param wanted the value to reach, in the measure's unit, other than the present one
     */
    public static List<SingleMove> of(Measure measure, DimensionSet set, Measured now, double wanted) {
        SingleMoves moves = new SingleMoves(measure, set, now);
        return moves.slopes().entrySet().stream()
                .flatMap(slope -> moves.move(slope.getKey(), slope.getValue(), wanted).stream())
                .sorted(Comparator.comparingDouble(SingleMove::share))
                .toList();
    }

    /**
     * The moves that bring a measure to the edge of a band that it is beyond, as {@link #of} finds them; none where the band
     * holds the value, or where there is no value.
     */
    public static List<SingleMove> into(Interval band, Measure measure, DimensionSet set) {
        return measure.of(new Subject(set)) instanceof Measured now && !band.contains(now.value())
                ? of(measure, set, now, now.value() < band.lower() ? band.lower() : band.upper())
                : List.of();
    }

    /** Change of the value per unit of each variable that may be moved. */
    private Map<Variable, Double> slopes() {
        Map<Variable, Double> slopes = new LinkedHashMap<>(now.sensitivities());
        slopes.keySet().removeIf(variable -> !variable.movable());
        return slopes.isEmpty() && set.sameTyresAllRound() ? axleByAxle() : slopes;
    }

    /** A measure that one size all round cannot change, as the stagger, can be changed by one axle's tyres alone. */
    private Map<Variable, Double> axleByAxle() {
        Map<Variable, Double> slopes = new LinkedHashMap<>();
        for (Axle axle : Axle.values()) {
            Variable diameter = Variable.of(axle.tyreDiameter());
            MeasureValue larger = measure.of(new Subject(set.moved(diameter, 1)));
            if (larger instanceof Measured measured && measured.value() != now.value()) {
                slopes.put(diameter, measured.value() - now.value());
            }
        }
        return slopes;
    }

    private Optional<SingleMove> move(Variable variable, double slope, double wanted) {
        MoveRange range = new MoveRange(set, variable);
        OptionalDouble found = new EdgeSearch(measure, range, now.value(), slope, wanted).change();
        return found.isPresent()
                ? Optional.of(new SingleMove(variable, found.getAsDouble(), range.share(found.getAsDouble())))
                : Optional.empty();
    }
}
