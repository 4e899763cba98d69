package studio.stancebook.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;
import studio.stancebook.quantity.Interval;

/**
 * The rule: JCGM 106:2012, conformity with a guard band of the expanded uncertainty U = 2u on both sides of each limit
 * (section numbers 8.3 from memory). Cases by hand.
 */
class AssessorTest {

    private static final double OPEN = Double.POSITIVE_INFINITY;
    private static final Measure WHEELBASE_IN_WHEELS = MeasureRegistry.builtIn().get("wheelbase-in-wheels");

    /** 2800 mm over 800 mm: 3.5 wheels; 8 mm over 800 mm: u = 0.01 wheels. */
    private static DimensionSet threeAndAHalfWheels(double wheelbaseUncertaintyMm) {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 800)
                .set(Dimension.REAR_TYRE_DIAMETER, 800)
                .uncertainty("wheelbase", wheelbaseUncertaintyMm)
                .uncertainty("frontTyreDiameter", 0)
                .build();
    }

    private static Verdict verdict(DimensionSet set, double lower, double upper) {
        Measured measured = (Measured) WHEELBASE_IN_WHEELS.of(new Subject(set));
        return Assessor.judge(measured, new Interval(lower, upper));
    }

    @ParameterizedTest
    @CsvSource({
        // The coverage interval is [3.48, 3.52].
        "3.48,   3.52,   inside",
        "3.0,    4.0,    inside",
        "3.4801, 4.0,    too-close",
        "3.0,    3.5199, too-close",
        "3.49,   3.51,   too-close",
        "3.52,   4.0,    too-close",
        "3.0,    3.48,   too-close",
        "3.5201, 4.0,    outside-low",
        "3.0,    3.4799, outside-high",
        "3.5,    3.5,    too-close",
        "3.6,    3.6,    outside-low",
        "-Infinity, 3.52, inside",
        "-Infinity, 3.51, too-close",
        "-Infinity, 3.47, outside-high",
        "3.48, Infinity, inside",
        "3.53, Infinity, outside-low",
        "-Infinity, Infinity, inside"
    })
    void decidesByTheCoverageIntervalAgainstTheClosedBand(double lower, double upper, String verdict) {
        assertEquals(verdict, verdict(threeAndAHalfWheels(8), lower, upper).key());
    }

    @ParameterizedTest
    @CsvSource({"3.5, 4, inside", "3, 3.5, inside", "3.5, 3.5, inside", "3.500001, 4, outside-low"})
    void decidesWithoutUncertaintyByTheValueAlone(double lower, double upper, String verdict) {
        assertEquals(verdict, verdict(threeAndAHalfWheels(0), lower, upper).key());
    }

    @Test
    void saysByHowMuchInTheUnitAndInBandWidths() {
        Verdict.Outside low = assertInstanceOf(Verdict.Outside.class, verdict(threeAndAHalfWheels(8), 3.6, 4.0));
        Verdict.Outside high = assertInstanceOf(Verdict.Outside.class, verdict(threeAndAHalfWheels(8), 3.0, 3.25));

        assertEquals(Side.LOW, low.side());
        assertEquals(0.1, low.by(), 1e-12);
        assertEquals(0.25, low.byBandWidths().orElseThrow(), 1e-12);
        assertEquals(Side.HIGH, high.side());
        assertEquals(0.25, high.by(), 1e-12);
        assertEquals(1, high.byBandWidths().orElseThrow(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"3.6, Infinity", "-Infinity, 3.4", "3.6, 3.6"})
    void hasNoShareOfABandThatIsOpenOrHasNoWidth(double lower, double upper) {
        Verdict.Outside outside =
                assertInstanceOf(Verdict.Outside.class, verdict(threeAndAHalfWheels(8), lower, upper));

        assertEquals(OptionalDouble.empty(), outside.byBandWidths());
        assertEquals(0.1, outside.by(), 1e-12);
    }

    @Test
    void answersEveryMeasureInTheOrderOfTheRegistry() {
        MeasureRegistry registry = MeasureRegistry.builtIn();
        Assessment assessment = new Assessor(registry)
                .assess(
                        threeAndAHalfWheels(8),
                        Map.of("wheelbase-in-wheels", new AppliedBand(3, new Interval(3, 3.4)), "no-such", band()));

        assertEquals(
                registry.all().stream().map(Measure::key).toList(),
                assessment.findings().stream().map(Finding::measure).toList());
        assertEquals(1, assessment.judged());
        assertEquals(1, assessment.outside());
        assertEquals(0, assessment.tooClose());
        Finding found = assessment.find("wheelbase-in-wheels").orElseThrow();
        assertEquals(3.5, found.value());
        assertEquals(0.01, found.uncertainty(), 1e-12);
        assertEquals(3, found.band().version());
    }

    private static AppliedBand band() {
        return new AppliedBand(1, new Interval(0, OPEN));
    }

    @Test
    void namesWhatIsMissingEvenWhereThereIsABand() {
        Assessment assessment = new Assessor(MeasureRegistry.builtIn())
                .assess(threeAndAHalfWheels(8), Map.of("height-in-wheels", band()));

        Finding height = assessment.find("height-in-wheels").orElseThrow();
        Verdict.NotMeasurable none = assertInstanceOf(Verdict.NotMeasurable.class, height.verdict());
        assertEquals(List.of("overallHeight, or roofApex"), none.missing());
        assertNull(height.value());
        assertNull(height.uncertainty());
        assertTrue(none.reason().contains("the overall height"));
        assertEquals(
                Verdict.VerdictKind.NO_BAND,
                assessment.find("wheels-spanned").orElseThrow().kind());
    }
}
