package studio.stancebook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.ClosingChecks;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.geometry.CriterionOutcome;
import studio.stancebook.geometry.OffRoadCriteria;
import studio.stancebook.geometry.OffRoadJudgement;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/**
 * The floor between the axles says nothing about the nose. Thresholds: 49 CFR 523.5(b)(2), approach at least 28 degrees;
 * Regulation (EU) 2018/858 Annex I, approach at least 25. The tangent sums are worked out by hand.
 */
class RecordedInPartTest {

    private static DimensionSetBuilder vehicle(Point... underbody) {
        return DimensionSet.builder()
                .tyres(TyreDesignation.parse("265/70R17"))
                .set(Dimension.WHEELBASE, 2850)
                .set(Dimension.FRONT_OVERHANG, 850)
                .set(Dimension.REAR_OVERHANG, 1100)
                .set(Polyline.UNDERBODY, List.of(underbody));
    }

    private static DimensionSetBuilder floorOnly() {
        return vehicle(new Point(500, 230), new Point(2300, 230));
    }

    private static MeasureValue value(String measure, DimensionSetBuilder set) {
        return MeasureRegistry.builtIn().get(measure).of(new Subject(set.build()));
    }

    private static OffRoadJudgement.CriterionResult unitedStates(int criterion, DimensionSetBuilder set) {
        return OffRoadCriteria.unitedStates()
                .judge(OffRoadReading.of(set.build()))
                .lines()
                .get(criterion);
    }

    @Test
    void missesTheTypedApproachAngleWhereTheUnderbodySaysNothingAheadOfTheAxle() {
        DimensionSetBuilder set = floorOnly().set(Dimension.APPROACH_ANGLE, 18);

        assertEquals(new CriterionOutcome.Missed(10), unitedStates(0, set).outcome());
        assertEquals(
                new CriterionOutcome.Missed(7),
                OffRoadCriteria.europeanUnion()
                        .judge(OffRoadReading.of(set.build()))
                        .lines()
                        .get(0)
                        .outcome());
    }

    @Test
    void cannotTellAnApproachAngleThatIsNeitherDrawnNorTyped() {
        NotMeasurable approach = assertInstanceOf(NotMeasurable.class, value("approach-angle", floorOnly()));

        assertEquals(
                "underbody recorded from 500 to 2300 mm only; needs the approach angle, or the underbody as far as the nose",
                approach.reason());
        assertInstanceOf(
                CriterionOutcome.Unmeasured.class, unitedStates(0, floorOnly()).outcome());
    }

    @Test
    void saysWhichPartTheRampAngleIsComputedFrom() {
        Measured ramp = assertInstanceOf(Measured.class, value("ramp-angle", floorOnly()));

        assertTrue(ramp.notes().stream()
                .map(Note::label)
                .toList()
                .contains("underbody recorded from 500 to 2300 mm only"));
        assertTrue(
                unitedStates(1, floorOnly()).reasons().get(0).contains("underbody recorded from 500 to 2300 mm only"));
    }

    /** A nose that ends above the front tyre, 300 mm ahead of its centre, is out of reach of any plane up to 90 degrees. */
    @Test
    void callsAnAngleNotLimitedOnlyWhereTheUnderbodyReachesTheNose() {
        DimensionSetBuilder high = vehicle(new Point(-290, 700), new Point(500, 230), new Point(2300, 230))
                .set(Dimension.FRONT_OVERHANG, 300);
        NotMeasurable approach = assertInstanceOf(NotMeasurable.class, value("approach-angle", high));

        assertEquals(NotMeasurable.Why.RECORDED_IN_PART, ((NotMeasurable) value("departure-angle", high)).why());
        assertEquals(NotMeasurable.Why.NOT_LIMITED, approach.why());
    }

    /** The recorded point at 200 mm ahead would allow more than 28 degrees; what is ahead of it may allow less. */
    @Test
    void doesNotCallAnUpperBoundMet() {
        DimensionSetBuilder set = vehicle(new Point(-450, 350), new Point(500, 230), new Point(2300, 230));

        assertTrue(((Measured) value("approach-angle", set)).value() > 28);
        assertInstanceOf(CriterionOutcome.Unmeasured.class, unitedStates(0, set).outcome());
    }

    @Test
    void takesTheTypedAngleWhereTheUnderbodyEndsShort() {
        DimensionSetBuilder set = vehicle(new Point(-450, 350), new Point(500, 230), new Point(2300, 230))
                .set(Dimension.APPROACH_ANGLE, 18);

        assertEquals(18, ((Measured) value("approach-angle", set)).value());
        assertEquals(List.of(), MeasureChecks.disagreements(set.build()));
        assertEquals(
                1,
                MeasureChecks.disagreements(
                                set.set(Dimension.APPROACH_ANGLE, 80).build())
                        .size());
    }

    @Test
    void doesNotDropPointsBelowTheGroundFromTheRunningClearance() {
        DimensionSetBuilder set = vehicle(new Point(-800, 400), new Point(1400, -30), new Point(3900, 400));

        assertEquals(OptionalDouble.of(0), OffRoadReading.of(set.build()).runningClearanceMm());
        assertEquals(new CriterionOutcome.Missed(200), unitedStates(3, set).outcome());
    }

    @Test
    void derivesTheGroundClearanceFromTheUnderbody() {
        DimensionSet set = vehicle(new Point(-800, 400), new Point(1400, 215), new Point(3900, 400))
                .build();

        assertEquals(215, new Readings(set).get(Reading.GROUND_CLEARANCE).value());
        assertEquals(
                215 / (432 + 2 * 186.0), ((Measured) value("clearance-in-wheels", set.toBuilder())).value(), 1e-12);
    }

    @Test
    void checksTheGroundClearanceAgainstTheUnderbody() {
        DimensionSetBuilder whole = vehicle(new Point(-800, 400), new Point(1400, 215), new Point(3900, 400));

        assertEquals(
                List.of(),
                ClosingChecks.of(whole.set(Dimension.GROUND_CLEARANCE, 220).build()));
        assertEquals(
                List.of("groundClearance", "underbody"),
                ClosingChecks.of(whole.set(Dimension.GROUND_CLEARANCE, 150).build())
                        .get(0)
                        .keys());
        assertEquals(
                List.of(),
                ClosingChecks.of(
                        floorOnly().set(Dimension.GROUND_CLEARANCE, 180).build()));
        assertEquals(
                1,
                ClosingChecks.of(
                                floorOnly().set(Dimension.GROUND_CLEARANCE, 280).build())
                        .size());
    }
}
