package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClosingChecksTest {

    private static DimensionSetBuilder lengths(double overall) {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_OVERHANG, 850)
                .set(Dimension.REAR_OVERHANG, 1000)
                .set(Dimension.OVERALL_LENGTH, overall)
                .uncertainty("wheelbase", 2)
                .uncertainty("frontOverhang", 2)
                .uncertainty("rearOverhang", 2)
                .uncertainty("overallLength", 2);
    }

    /** Four values of u = 2 mm: the joint uncertainty of the difference is 4 mm, twice that 8 mm. */
    @Test
    void allowsTwiceTheJointUncertaintyAndNoMore() {
        assertTrue(ClosingChecks.of(lengths(4658).build()).isEmpty());
        assertEquals(1, ClosingChecks.of(lengths(4658.001).build()).size());
    }

    @Test
    void allowsTwoMillimetresHoweverSureTheValues() {
        DimensionSetBuilder sure = lengths(4652);
        for (String key : List.of("wheelbase", "frontOverhang", "rearOverhang", "overallLength")) {
            sure.uncertainty(key, 0);
        }

        assertTrue(ClosingChecks.of(sure.build()).isEmpty());
        assertEquals(
                1,
                ClosingChecks.of(sure.set(Dimension.OVERALL_LENGTH, 4652.5).build())
                        .size());
    }

    @Test
    void saysByHowMuchItDoesNotClose() {
        Disagreement found = ClosingChecks.of(lengths(4750).build()).get(0);

        assertEquals(100, found.gap(), 1e-9);
        assertEquals(
                "Overall length is 4750 mm, but front overhang, wheelbase and rear overhang give 4650 mm: it does not close by"
                        + " 100 mm, and 8 mm is allowed.",
                found.message());
    }

    @Test
    void comparesScalarsWithTheirLandmarks() {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.OVERALL_HEIGHT, 1500)
                .set(Landmark.ROOF_APEX, 1600, 1600)
                .set(Dimension.COWL_HEIGHT, 1000)
                .set(Dimension.DASH_TO_AXLE, 500)
                .set(Landmark.COWL, 700, 1200)
                .set(Dimension.ROCKER_HEIGHT, 300)
                .set(Landmark.ROCKER_FRONT, 500, 400)
                .set(Landmark.ROCKER_REAR, 2300, 400)
                .set(Dimension.SCREEN_ANGLE, 60)
                .set(Landmark.SCREEN_TOP, 1100, 1600)
                .build();

        assertEquals(
                List.of("overallHeight", "cowlHeight", "dashToAxle", "rockerHeight", "screenAngle"),
                ClosingChecks.of(set).stream().map(d -> d.keys().get(0)).toList());
    }

    @Test
    void refusesAnEntryThatDoesNotCloseAndNamesTheField() {
        ImpossibleDimensions refused = assertThrows(
                ImpossibleDimensions.class,
                () -> DimensionChecks.requireSound(lengths(4750).build(), List.of()));

        assertEquals("dimensions.overallLength", refused.errors().get(0).field());
    }

    @Test
    void refusesValuesOutsideTheirRangeAndAcceptsItsEnds() {
        DimensionSetBuilder builder = DimensionSet.builder();

        assertTrue(RangeChecks.problemsOf(builder.set(Dimension.WHEELBASE, 1000).build())
                .isEmpty());
        assertTrue(RangeChecks.problemsOf(builder.set(Dimension.WHEELBASE, 6000).build())
                .isEmpty());
        assertEquals(
                "285 mm is outside the plausible range 1000 to 6000 mm.",
                RangeChecks.problemsOf(builder.set(Dimension.WHEELBASE, 285).build())
                        .get(0)
                        .message());
    }

    @Test
    void judgesASketchWithoutDimensionsOnlyByItsSigns() {
        DimensionSetBuilder sketch =
                DimensionSet.builder().scale(Scale.UNSCALED).set(Dimension.WHEELBASE, 3.4);

        assertTrue(RangeChecks.problemsOf(sketch.build()).isEmpty());
        assertEquals(
                1,
                RangeChecks.problemsOf(sketch.set(Dimension.OVERALL_HEIGHT, 0).build())
                        .size());
    }
}
