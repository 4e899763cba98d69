package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/**
 * Values that cannot all be right. 265/70R17: rim 17 x 25.4 = 432 mm, section height 186 mm, diameter 804 mm (ISO 4000-1,
 * as {@code reference/tyre_designations.json} has it).
 */
class ContradictionsTest {

    private static final TyreDesignation TYRE = TyreDesignation.parse("265/70R17");

    private static DimensionSetBuilder set() {
        return DimensionSet.builder().set(Dimension.WHEELBASE, 2850);
    }

    private static List<String> messages(DimensionSetBuilder set) {
        return ClosingChecks.of(set.build()).stream().map(Disagreement::message).toList();
    }

    private static boolean agrees(DimensionSetBuilder set) {
        return ClosingChecks.of(set.build()).isEmpty();
    }

    @Test
    void reportsARimThatTheDesignationContradicts() {
        assertEquals(
                List.of("Front rim diameter is 508 mm, but front tyre gives 432 mm:"
                        + " it does not close by 76 mm, and 10 mm is allowed."),
                messages(set().tyre(Axle.FRONT, TYRE).set(Dimension.FRONT_RIM_DIAMETER, 508)));
        assertTrue(agrees(set().tyre(Axle.FRONT, TYRE).set(Dimension.FRONT_RIM_DIAMETER, 442)));
    }

    @Test
    void usesTheUncertaintiesThatWereGivenForTyresToo() {
        DimensionSetBuilder sure = set().tyre(Axle.FRONT, TYRE)
                .uncertainty("frontTyre", 1)
                .uncertainty("frontTyreDiameter", 0)
                .uncertainty("frontRimDiameter", 0);

        assertTrue(agrees(sure.set(Dimension.FRONT_TYRE_DIAMETER, 806).set(Dimension.FRONT_RIM_DIAMETER, 434)));
        assertEquals(
                List.of(
                        "Front tyre diameter is 806.5 mm, but front tyre gives 804 mm:"
                                + " it does not close by 2.5 mm, and 2 mm is allowed.",
                        "Front rim diameter is 434.5 mm, but front tyre gives 432 mm:"
                                + " it does not close by 2.5 mm, and 2 mm is allowed."),
                messages(sure.set(Dimension.FRONT_TYRE_DIAMETER, 806.5).set(Dimension.FRONT_RIM_DIAMETER, 434.5)));
    }

    /** The free radius is 402, the rim radius 216; the loaded radius is known to 2 mm, the diameter to 4. */
    @ParameterizedTest
    @CsvSource({"600, above the free radius of the tyre", "150, below the radius of the rim"})
    void keepsTheLoadedRadiusBetweenRimAndFreeRadius(double radius, String limit) {
        DimensionSetBuilder tyre = set().tyre(Axle.FRONT, TYRE).uncertainty("frontLoadedRadius", 2);

        List<String> found = messages(tyre.set(Dimension.FRONT_LOADED_RADIUS, radius));

        assertEquals(1, found.size());
        assertTrue(found.get(0).contains("it must not be " + limit), found.get(0));
        assertTrue(agrees(tyre.set(Dimension.FRONT_LOADED_RADIUS, 402)));
        assertTrue(agrees(tyre.set(Dimension.FRONT_LOADED_RADIUS, 216)));
    }

    @Test
    void comparesTheOutlineWithLengthOverhangAndHeight() {
        DimensionSetBuilder drawn = set().set(Dimension.OVERALL_LENGTH, 4700)
                .set(Dimension.FRONT_OVERHANG, 850)
                .set(Dimension.OVERALL_HEIGHT, 1500)
                .set(Polyline.OUTLINE, List.of(new Point(-850, 500), new Point(1400, 1500), new Point(3850, 500)));
        DimensionSetBuilder shifted = drawn.build().toBuilder()
                .set(Polyline.OUTLINE, List.of(new Point(-600, 500), new Point(1400, 1400), new Point(3850, 500)));

        assertTrue(agrees(drawn));
        assertEquals(
                List.of("overallLength", "frontOverhang", "overallHeight"),
                ClosingChecks.of(shifted.build()).stream()
                        .map(found -> found.keys().get(0))
                        .toList());
    }

    @Test
    void reportsABeltLineThatRunsForward() {
        assertEquals(
                List.of("Belt line, front, x, is 2700 mm: it must lie ahead of belt line, rear, 600 mm."),
                messages(set().set(Landmark.BELT_FRONT, 2700, 1000).set(Landmark.BELT_REAR, 600, 1040)));
    }

    @Test
    void reportsAnArchOpeningTurnedRoundAndABonnetBehindItsCowl() {
        assertEquals(
                List.of(
                        "Front wheel arch, front edge, x, is 420 mm: it must lie ahead of front wheel arch, rear edge, -380 mm."),
                messages(set().set(Landmark.ARCH_FRONT_FORE, 420, 350).set(Landmark.ARCH_FRONT_AFT, -380, 350)));
        assertEquals(
                List.of(
                        "Bonnet, front upper edge, x, is 600 mm: it must lie ahead of cowl, base of the windscreen, 500 mm."),
                messages(set().set(Landmark.BONNET_EDGE, 600, 900).set(Landmark.COWL, 500, 1000)));
    }

    @Test
    void reportsAWindscreenUpsideDown() {
        assertEquals(
                List.of(
                        "Cowl, base of the windscreen, z, is 1700 mm: it must lie below top of the windscreen, 1100 mm."),
                messages(set().set(Landmark.COWL, 500, 1700).set(Landmark.SCREEN_TOP, 1100, 1100)));
    }

    /** 1 + 3.5 + 1 is 5.5. */
    @Test
    void reportsASketchThatDoesNotClose() {
        DimensionSetBuilder sketch = DimensionSet.builder()
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 3.5)
                .set(Dimension.FRONT_OVERHANG, 1)
                .set(Dimension.REAR_OVERHANG, 1);

        assertEquals(
                List.of("Overall length is 7.4, but front overhang, wheelbase and rear overhang give 5.5:"
                        + " it does not close by 1.9, and 0.07 is allowed."),
                messages(sketch.set(Dimension.OVERALL_LENGTH, 7.4)));
        assertTrue(agrees(sketch.set(Dimension.OVERALL_LENGTH, 5.55)));
    }

    @Test
    void allowsASketchAThousandthOfItsWheelbaseHoweverSureTheValues() {
        DimensionSetBuilder sketch = DimensionSet.builder()
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 1000)
                .set(Dimension.FRONT_OVERHANG, 300)
                .set(Dimension.REAR_OVERHANG, 300);
        List.of("wheelbase", "frontOverhang", "rearOverhang", "overallLength")
                .forEach(key -> sketch.uncertainty(key, 0));

        assertTrue(agrees(sketch.set(Dimension.OVERALL_LENGTH, 1601)));
        assertEquals(1, messages(sketch.set(Dimension.OVERALL_LENGTH, 1601.5)).size());
    }

    @Test
    void knowsLengthsOfASketchToAHalfPerCentOfItsWheelbase() {
        DimensionSet sketch = DimensionSet.builder()
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 3.5)
                .set(Dimension.OVERALL_HEIGHT, 1.6)
                .uncertainty("overallHeight", 0.1)
                .build();

        assertEquals(0.0175, sketch.standardUncertainty(Variable.of(Dimension.WHEELBASE)), 1e-15);
        assertEquals(0.1, sketch.standardUncertainty(Variable.of(Dimension.OVERALL_HEIGHT)));
        assertEquals(0.5, sketch.standardUncertainty(Variable.of(Dimension.SCREEN_ANGLE)));
    }
}
