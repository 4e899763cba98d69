package studio.stancebook.moves;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import studio.stancebook.measure.Sketches;
import studio.stancebook.measure.Subject;
import studio.stancebook.quantity.Interval;

class SingleMovesTest {

    private static final DimensionSet SKETCH = Sketches.withOneTyreSize(1);

    private static List<SingleMove> moves(String measure, DimensionSet set, double wanted) {
        Measure of = MeasureRegistry.builtIn().get(measure);
        return SingleMoves.of(of, set, (Measured) of.of(new Subject(set)), wanted);
    }

    private static double value(Measure measure, DimensionSet set) {
        return ((Measured) measure.of(new Subject(set))).value();
    }

    static Stream<Measure> measurable() {
        return MeasureRegistry.builtIn().all().stream()
                .filter(measure -> measure.of(new Subject(SKETCH)) instanceof Measured);
    }

    @ParameterizedTest
    @MethodSource("measurable")
    void reachTheWantedValueWhenTheyAreCarriedOut(Measure measure) {
        for (double share : new double[] {-0.05, -0.004, 0.004, 0.05}) {
            double now = value(measure, SKETCH);
            double wanted = now + share * Math.max(Math.abs(now), 0.1);
            List<SingleMove> moves = moves(measure.key(), SKETCH, wanted);
            assertFalse(moves.isEmpty(), () -> measure + " to " + wanted);
            moves.forEach(move -> assertReaches(measure, move, wanted));
        }
    }

    private static void assertReaches(Measure measure, SingleMove move, double wanted) {
        DimensionSet moved = SKETCH.moved(move.variable(), move.change());
        assertEquals(wanted, value(measure, moved), 1e-9 * Math.max(1, Math.abs(wanted)), move::toString);
        assertEquals(List.of(), RangeChecks.problemsOf(moved), move::toString);
    }

    /** What along the slope is less than 200 mm away is within reach: no move is lost to the search. */
    @ParameterizedTest
    @MethodSource("measurable")
    void existForEveryVariableWhenTheChangeIsSmall(Measure measure) {
        Measured now = (Measured) measure.of(new Subject(SKETCH));
        for (double step : new double[] {-0.001, 0.001}) {
            Set<String> expected = now.sensitivities().entrySet().stream()
                    .filter(slope -> slope.getKey().movable() && Math.abs(0.001 / slope.getValue()) < 200)
                    .map(slope -> slope.getKey().key())
                    .collect(Collectors.toSet());
            List<SingleMove> moves = moves(measure.key(), SKETCH, now.value() + step);
            assertTrue(variables(moves).containsAll(expected), () -> measure + ": " + moves);
        }
    }

    /** Each measure that is linear over linear in a variable has its move: none is lost to the search. */
    @Test
    void existForEveryLengthThatARatioIsMadeOf() {
        assertEquals(Set.of("wheelbase", "tyreDiameter"), variables(moves("wheels-spanned", SKETCH, 4.6)));
        assertEquals(
                Set.of("cowl.x", "cowl.z", "screenTop.x", "screenTop.z", "tyreDiameter"),
                variables(moves("screen-aim-in-wheels", SKETCH, 0.5)));
    }

    private static Set<String> variables(List<SingleMove> moves) {
        return moves.stream().map(move -> move.variable().key()).collect(Collectors.toSet());
    }

    @Test
    void comeTheRelativelySmallestFirst() {
        List<SingleMove> moves = moves("screen-aim-in-wheels", SKETCH, 0.5);

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
        DimensionSet small = Sketches.withOneTyreSize(1);
        DimensionSet large = Sketches.withOneTyreSize(1.25);
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

    private static DimensionSet threeAndAHalfWheels() {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 800)
                .set(Dimension.REAR_TYRE_DIAMETER, 800)
                .build();
    }

    private static Map<String, Double> into(double lower, double upper) {
        Measure measure = MeasureRegistry.builtIn().get("wheelbase-in-wheels");
        return SingleMoves.into(new Interval(lower, upper), measure, threeAndAHalfWheels()).stream()
                .collect(Collectors.toMap(move -> move.variable().key(), SingleMove::change));
    }

    /** 2800 - 80 = 2720 = 3.4 x 800; 2800 / 3.4 = 823.529; 2800 + 80 = 2880 = 3.6 x 800; 2800 / 3.6 = 777.778. */
    @Test
    void bringTheValueToTheEdgeOfABandThatItIsBeyond() {
        Map<String, Double> down = into(3.0, 3.4);
        Map<String, Double> up = into(3.6, Double.POSITIVE_INFINITY);

        assertEquals(Set.of("wheelbase", "tyreDiameter"), down.keySet());
        assertEquals(-80, down.get("wheelbase"), 1e-6);
        assertEquals(23.529411764, down.get("tyreDiameter"), 1e-6);
        assertEquals(80, up.get("wheelbase"), 1e-6);
        assertEquals(-22.222222222, up.get("tyreDiameter"), 1e-6);
    }

    @Test
    void areNoneWhereTheBandHoldsTheValueOrThereIsNone() {
        assertEquals(Map.of(), into(3.0, 3.5));
        assertEquals(Map.of(), into(3.5, 4.0));
        Measure height = MeasureRegistry.builtIn().get("height-in-wheels");
        assertEquals(List.of(), SingleMoves.into(new Interval(1, 2), height, threeAndAHalfWheels()));
    }
}
