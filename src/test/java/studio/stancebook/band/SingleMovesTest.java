package studio.stancebook.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.dimension.Variable;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;

class SingleMovesTest {

    private static List<SingleMove> moves(String measure, DimensionSet set, double wanted) {
        Measure of = MeasureRegistry.builtIn().get(measure);
        return SingleMoves.of(of, set, (Measured) of.of(new Subject(set)), wanted);
    }

    private static double value(Measure measure, DimensionSet set) {
        return ((Measured) measure.of(new Subject(set))).value();
    }

    static Stream<Measure> measurable() {
        return MeasureRegistry.builtIn().all().stream()
                .filter(measure -> measure.of(new Subject(SketchForMoves.set())) instanceof Measured);
    }

    @ParameterizedTest
    @MethodSource("measurable")
    void reachTheWantedValueWhenTheyAreCarriedOut(Measure measure) {
        for (double share : new double[] {-0.05, -0.004, 0.004, 0.05}) {
            double now = value(measure, SketchForMoves.set());
            double wanted = now + share * Math.max(Math.abs(now), 0.1);
            List<SingleMove> moves = moves(measure.key(), SketchForMoves.set(), wanted);
            assertFalse(moves.isEmpty(), () -> measure + " to " + wanted);
            moves.forEach(move -> assertReaches(measure, move, wanted));
        }
    }

    private static void assertReaches(Measure measure, SingleMove move, double wanted) {
        DimensionSet moved = SketchForMoves.set().moved(move.variable(), move.change());
        assertEquals(wanted, value(measure, moved), 1e-9 * Math.max(1, Math.abs(wanted)), move::toString);
        assertEquals(List.of(), RangeChecks.problemsOf(moved), move::toString);
    }

    /** What along the slope is less than 200 mm away is within reach: no move is lost to the search. */
    @ParameterizedTest
    @MethodSource("measurable")
    void existForEveryVariableWhenTheChangeIsSmall(Measure measure) {
        Measured now = (Measured) measure.of(new Subject(SketchForMoves.set()));
        for (double step : new double[] {-0.001, 0.001}) {
            Set<String> expected = now.sensitivities().entrySet().stream()
                    .filter(slope -> slope.getKey().movable() && Math.abs(0.001 / slope.getValue()) < 200)
                    .map(slope -> slope.getKey().key())
                    .collect(Collectors.toSet());
            List<SingleMove> moves = moves(measure.key(), SketchForMoves.set(), now.value() + step);
            assertTrue(variables(moves).containsAll(expected), () -> measure + ": " + moves);
        }
    }

    /** Each measure that is linear over linear in a variable has its move: none is lost to the search. */
    @Test
    void existForEveryLengthThatARatioIsMadeOf() {
        assertEquals(
                Set.of("wheelbase", "tyreDiameter"), variables(moves("wheels-spanned", SketchForMoves.set(), 4.6)));
        assertEquals(
                Set.of("cowl.x", "cowl.z", "screenTop.x", "screenTop.z", "tyreDiameter"),
                variables(moves("screen-aim-in-wheels", SketchForMoves.set(), 0.5)));
    }

    private static Set<String> variables(List<SingleMove> moves) {
        return moves.stream().map(move -> move.variable().key()).collect(Collectors.toSet());
    }

    @Test
    void comeTheRelativelySmallestFirst() {
        List<SingleMove> moves = moves("screen-aim-in-wheels", SketchForMoves.set(), 0.5);

        List<Double> shares = moves.stream().map(SingleMove::share).toList();
        List<Double> sorted = new ArrayList<>(shares);
        sorted.sort(null);
        assertEquals(sorted, shares);
        assertTrue(moves.size() > 1);
    }

    /** wheelbase 2800 mm: 80 mm are 80 / 2800 of it. A cowl moved 14 mm is moved by 14 / 2800 of the wheelbase. */
    @Test
    void areComparedByTheRecordedValueOrTheWheelbase() {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .set(Landmark.COWL, 0, 1000)
                .build();

        SingleMove wheelbase = only("wheelbase", moves("wheelbase-in-wheels", set, 2720.0 / 700));
        SingleMove cowl = only("cowl.x", moves("dash-to-axle-in-wheels", set, 14.0 / 700));
        assertEquals(-80, wheelbase.change(), 1e-6);
        assertEquals(80.0 / 2800, wheelbase.share(), 1e-9);
        assertEquals(14, cowl.change(), 1e-6);
        assertEquals(14.0 / 2800, cowl.share(), 1e-9);
    }

    private static SingleMove only(String variable, List<SingleMove> moves) {
        return moves.stream()
                .filter(move -> move.variable().equals(Variable.ofKey(variable).orElseThrow()))
                .findFirst()
                .orElseThrow();
    }

    /** 20 wheels would take a wheelbase of 16 m, or tyres of 140 mm: neither is plausible. */
    @ParameterizedTest
    @CsvSource({"20, 0", "6.9, 2", "8, 1"})
    void areLeftOutBeyondThePlausibleRange(double wheels, int count) {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 800)
                .set(Dimension.REAR_TYRE_DIAMETER, 800)
                .build();

        assertEquals(count, moves("wheelbase-in-wheels", set, wheels).size());
    }

    /** No dash-to-axle has a value, whatever the tyre, when the cowl stands over the wheel centre. */
    @Test
    void areLeftOutWhereNoChangeReachesTheValue() {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 800)
                .set(Dimension.REAR_TYRE_DIAMETER, 800)
                .set(Dimension.DASH_TO_AXLE, 400)
                .build();

        assertEquals(Set.of("dashToAxle"), variables(moves("dash-to-axle-in-wheels", set, -0.1)));
    }

    /** Twice the size, twice the change. */
    @Test
    void growWithTheVehicle() {
        DimensionSet small = SketchForMoves.scaled(1);
        DimensionSet large = SketchForMoves.scaled(1.25);
        for (String measure : List.of("screen-aim-in-wheels", "glass-to-body", "bonnet-share", "belt-rise")) {
            double wanted = 1.03 * value(MeasureRegistry.builtIn().get(measure), small);
            List<SingleMove> ofSmall = moves(measure, small, wanted);
            List<SingleMove> ofLarge = moves(measure, large, wanted);
            assertEquals(variables(ofSmall), variables(ofLarge));
            for (int i = 0; i < ofSmall.size(); i++) {
                assertEquals(1.25 * ofSmall.get(i).change(), ofLarge.get(i).change(), 1e-4);
            }
        }
    }
}
