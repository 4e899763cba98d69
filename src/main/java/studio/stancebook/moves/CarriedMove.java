package studio.stancebook.moves;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.ClosingChecks;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Variable;
import studio.stancebook.dimension.reshaping.GivesWay;
import studio.stancebook.dimension.reshaping.Reshaping;
import studio.stancebook.geometry.Point;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;

/**
 * A single move as it is carried out on a whole side view, where other values follow it.
 *
 * @param move the change of one value, all others held
 * @param with the length that takes it up; null where none has to
 */
public record CarriedMove(SingleMove move, @Nullable GivesWay with) {

    /** How near to the edge it must bring the measure although others follow, as a share of the way. */
    private static final double MISS = 0.05;

    /**
     * Those of some single moves that still bring a measure to the edge when the rest of the side view follows, and after which
     * it closes as well as before; each is looked for when it is asked for.
     *
     * @param moves as {@link SingleMoves} found them for this measure and set
     */
    public static Stream<CarriedMove> of(List<SingleMove> moves, Measure measure, DimensionSet set) {
        if (!(measure.of(new Subject(set)) instanceof Measured now)) {
            return Stream.empty();
        }
        int open = ClosingChecks.of(set).size();
        return moves.stream().flatMap(move -> {
            double edge = valueAfter(set.moved(move.variable(), move.change()), measure);
            double miss = MISS * Math.abs(edge - now.value());
            return ways(set, move).stream()
                    .filter(way -> way.reaches(edge, miss, measure, set, open))
                    .limit(1);
        });
    }

    private static List<CarriedMove> ways(DimensionSet set, SingleMove move) {
        if (!set.scalars().keySet().containsAll(Reshaping.ADDING_UP) || !isAlong(move.variable())) {
            return List.of(new CarriedMove(move, null));
        }
        List<CarriedMove> ways = new ArrayList<>();
        for (GivesWay way : GivesWay.values()) {
            if (!way.key().equals(move.variable().key())) {
                ways.add(new CarriedMove(move, way));
            }
        }
        return ways;
    }

    private static boolean isAlong(Variable variable) {
        return Dimension.ofKey(variable.key())
                .filter(Reshaping.ADDING_UP::contains)
                .isPresent();
    }

    private boolean reaches(double edge, double miss, Measure measure, DimensionSet set, int open) {
        DimensionSet after = appliedTo(set, move.change());
        return Math.abs(valueAfter(after, measure) - edge) <= miss
                && ClosingChecks.of(after).size() <= open;
    }

    /** NaN where the measure has no value. */
    private static double valueAfter(DimensionSet after, Measure measure) {
        return measure.of(new Subject(after)) instanceof Measured measured ? measured.value() : Double.NaN;
    }

    /**
     * The side view after this move.
     *
     * @param change in place of the exact one, as a rounded one
     */
    public DimensionSet appliedTo(DimensionSet set, double change) {
        Variable variable = move.variable();
        GivesWay way = with == null ? GivesWay.LENGTH : with;
        Optional<Dimension> dimension = Dimension.ofKey(variable.key());
        if (dimension.isPresent() && set.scalar(dimension.get()).isPresent()) {
            double from = set.scalar(dimension.get()).orElseThrow();
            return Reshaping.with(set, dimension.get(), from + change, way);
        }
        double byX = variable.key().endsWith(".x") ? change : 0;
        double byZ = variable.key().endsWith(".z") ? change : 0;
        Point landmark =
                Landmark.ofKey(variable.valueKey()).flatMap(set::landmark).orElse(null);
        if (landmark != null) {
            Point to = new Point(landmark.x() + byX, landmark.z() + byZ);
            return Reshaping.with(set, Landmark.ofKey(variable.valueKey()).orElseThrow(), to);
        }
        return Polyline.ofKey(variable.valueKey())
                .map(line -> Reshaping.shifted(set, line, byX, byZ))
                .orElseGet(() -> set.moved(variable, change));
    }
}
