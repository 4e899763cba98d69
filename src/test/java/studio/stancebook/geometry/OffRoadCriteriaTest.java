package studio.stancebook.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Against {@code reference/offroad_classification.json}; see SOURCES.md. */
class OffRoadCriteriaTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    static Stream<OffRoadCriteria> all() {
        return Stream.of(OffRoadCriteria.unitedStates(), OffRoadCriteria.europeanUnion());
    }

    @TestFactory
    Stream<DynamicTest> classifiesTheReferenceCases() throws IOException {
        JsonNode cases = read().get("cases");
        assertEquals(3, cases.size());
        return cases.valueStream()
                .map(one -> DynamicTest.dynamicTest(one.get("inputs").toString(), () -> {
                    check(OffRoadCriteria.unitedStates(), one, "cfr_523_5_b_2", "meets_4_of_5");
                    check(OffRoadCriteria.europeanUnion(), one, "eu_M1_N1_le_2t", "meets_5_of_6");
                }));
    }

    private static void check(OffRoadCriteria criteria, JsonNode one, String scheme, String meets) {
        OffRoadJudgement judgement = criteria.judge(dimensions(one.get("inputs")));
        JsonNode expected = one.get(scheme);
        List<Boolean> met = judgement.lines().stream()
                .map(line -> line.outcome() instanceof CriterionOutcome.Met)
                .toList();
        assertEquals(
                expected.get("flags").valueStream().map(JsonNode::asBoolean).toList(), met);
        assertEquals(expected.get("count").asInt(), judgement.metCount());
        assertEquals(expected.get(meets).asBoolean(), judgement.verdict() == OffRoadJudgement.Conclusion.ENOUGH);
    }

    private static OffRoadDimensions dimensions(JsonNode inputs) {
        OptionalDouble clearance = value(inputs, "running_or_between_axles_mm");
        return new OffRoadDimensions(
                value(inputs, "approach"),
                value(inputs, "departure"),
                value(inputs, "ramp"),
                clearance,
                value(inputs, "front_axle_mm"),
                value(inputs, "rear_axle_mm"),
                clearance);
    }

    private static OptionalDouble value(JsonNode inputs, String name) {
        return OptionalDouble.of(inputs.get(name).asDouble());
    }

    @Test
    void asksForFourOfFiveInTheUnitedStatesAndFiveOfSixInTheUnion() throws IOException {
        JsonNode thresholds = read().get("thresholds");

        assertThresholds(thresholds.get("cfr"), "4 of 5", OffRoadCriteria.unitedStates());
        assertThresholds(thresholds.get("eu_M1_N1_le_2t"), "5 of 6", OffRoadCriteria.europeanUnion());
    }

    private static void assertThresholds(JsonNode expected, String need, OffRoadCriteria criteria) {
        assertEquals(need, expected.get("need").asString());
        assertEquals(need, criteria.needed() + " of " + criteria.criteria().size());
        assertEquals(
                expected.properties().stream()
                        .filter(entry -> entry.getValue().isNumber())
                        .map(entry ->
                                entry.getValue().asDouble() * (entry.getKey().endsWith("_cm") ? 10 : 1))
                        .toList(),
                criteria.criteria().stream().map(OffRoadCriterion::least).toList());
    }

    @Test
    void saysByHowMuchTheWorseAxleMisses() {
        OffRoadJudgement judgement = OffRoadCriteria.unitedStates()
                .judge(new OffRoadDimensions(
                        NONE, NONE, NONE, NONE, OptionalDouble.of(175), OptionalDouble.of(160), NONE));

        assertEquals(new CriterionOutcome.Missed(20), judgement.lines().get(4).outcome());
        assertEquals(0, judgement.metCount());
        assertEquals(4, judgement.unmeasuredCount());
    }

    @Test
    void oneAxleTooLowIsEnoughToMissTheCriterion() {
        assertEquals(new CriterionOutcome.Missed(1), axles(OptionalDouble.of(179), NONE));
        assertEquals(
                new CriterionOutcome.Unmeasured(List.of(OffRoadQuantity.REAR_AXLE_CLEARANCE)),
                axles(OptionalDouble.of(180), NONE));
        assertEquals(new CriterionOutcome.Met(), axles(OptionalDouble.of(180), OptionalDouble.of(180)));
    }

    private static CriterionOutcome axles(OptionalDouble front, OptionalDouble rear) {
        return OffRoadCriteria.unitedStates()
                .judge(new OffRoadDimensions(NONE, NONE, NONE, NONE, front, rear, NONE))
                .lines()
                .get(4)
                .outcome();
    }

    @Test
    void anAngleThatNothingLimitsMeetsItsCriterion() {
        OptionalDouble unlimited = OptionalDouble.of(Double.POSITIVE_INFINITY);
        OffRoadJudgement judgement = OffRoadCriteria.europeanUnion()
                .judge(new OffRoadDimensions(unlimited, NONE, NONE, NONE, NONE, NONE, NONE));

        assertEquals(new CriterionOutcome.Met(), judgement.lines().get(0).outcome());
    }

    @Test
    void staysOpenWhileUnmeasuredCriteriaCouldDecide() {
        OptionalDouble much = OptionalDouble.of(500);
        OptionalDouble little = OptionalDouble.of(1);

        assertEquals(OffRoadJudgement.Conclusion.OPEN, verdict(much, much, much, NONE));
        assertEquals(OffRoadJudgement.Conclusion.OPEN, verdict(little, much, much, NONE));
        assertEquals(OffRoadJudgement.Conclusion.TOO_FEW, verdict(little, little, much, NONE));
        assertEquals(OffRoadJudgement.Conclusion.ENOUGH, verdict(much, much, much, much));
    }

    /** United States: three angles and running clearance; the axles are not measured. */
    private static OffRoadJudgement.Conclusion verdict(
            OptionalDouble approach, OptionalDouble departure, OptionalDouble ramp, OptionalDouble running) {
        return OffRoadCriteria.unitedStates()
                .judge(new OffRoadDimensions(approach, departure, ramp, running, NONE, NONE, NONE))
                .verdict();
    }

    @Test
    void refusesNegativeValues() {
        OptionalDouble negative = OptionalDouble.of(-1);

        assertThrows(
                IllegalArgumentException.class,
                () -> new OffRoadDimensions(NONE, NONE, NONE, NONE, NONE, NONE, negative));
        assertThrows(
                IllegalArgumentException.class,
                () -> new OffRoadDimensions(OptionalDouble.of(Double.NaN), NONE, NONE, NONE, NONE, NONE, NONE));
    }

    @ParameterizedTest
    @MethodSource("all")
    void hasWordsForEverythingItNames(OffRoadCriteria criteria) {
        ResourceBundle words = ResourceBundle.getBundle("messages/geometry");

        assertTrue(words.containsKey(OffRoadCriteria.CAUTION_KEY));
        assertTrue(words.containsKey("geometry.off-road." + criteria.key()));
        criteria.notCheckedKeys().forEach(key -> assertTrue(words.containsKey(key), key));
        criteria.criteria().stream()
                .flatMap(criterion -> criterion.quantities().stream())
                .forEach(quantity -> assertTrue(words.containsKey("geometry.off-road.quantity." + quantity.key())));
    }

    private static JsonNode read() throws IOException {
        try (InputStream file =
                OffRoadCriteriaTest.class.getResourceAsStream("/reference/offroad_classification.json")) {
            return JsonMapper.shared().readTree(Objects.requireNonNull(file));
        }
    }
}
