package studio.stancebook.band;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.quantity.Interval;

/** L101 / D + 1 and L101 / D, rim share and sidewall share: each pair is one figure in two forms (domain page). */
class RepeatedMeasuresTest {

    private static Assessment assessed(Map<String, AppliedBand> bands) {
        DimensionSet car = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .set(Dimension.FRONT_RIM_DIAMETER, 432)
                .set(Dimension.REAR_RIM_DIAMETER, 432)
                .set(Dimension.OVERALL_HEIGHT, 1400)
                .build();
        return new Assessor(MeasureRegistry.builtIn()).assess(car, bands);
    }

    private static AppliedBand band(double lower, double upper) {
        return new AppliedBand(1, new Interval(lower, upper));
    }

    /** 4.0 and 5.0 wheels, rim 0.617 and sidewall 0.191; only the height, 2.0, is a figure of its own. */
    @Test
    void countOnce() {
        Assessment assessment = assessed(Map.of(
                "wheelbase-in-wheels", band(3, 3.5),
                "wheels-spanned", band(4, 4.5),
                "sidewall-share", band(0.25, 0.3),
                "rim-share", band(0.4, 0.5),
                "height-in-wheels", band(1.5, 2.5)));

        assertEquals(3, assessment.judged());
        assertEquals(2, assessment.outside());
        assertEquals(0, assessment.tooClose());
    }

    @Test
    void countAsOutsideWhereOneOfThemIs() {
        Assessment assessment = assessed(Map.of("wheelbase-in-wheels", band(3, 3.5), "wheels-spanned", band(4, 5.001)));

        assertEquals(1, assessment.judged());
        assertEquals(1, assessment.outside());
        assertEquals(0, assessment.tooClose());
    }

    @Test
    void countWhereOnlyTheRepeatedFormHasABand() {
        assertEquals(1, assessed(Map.of("wheels-spanned", band(4, 4.5))).outside());
    }
}
