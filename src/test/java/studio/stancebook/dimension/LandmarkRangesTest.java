package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import studio.stancebook.problem.FieldError;

/** The shares are studio decision 0082; they come from common practice, no source. */
class LandmarkRangesTest {

    private static DimensionSet cowlAt(Scale scale, double wheelbase, double x, double z) {
        return DimensionSet.builder()
                .scale(scale)
                .set(Dimension.WHEELBASE, wheelbase)
                .set(Landmark.COWL, x, z)
                .build();
    }

    @Test
    void refusesABonnetThatCollapsesToTheGround() {
        assertEquals(
                List.of(new FieldError(
                        "cowl",
                        "Cowl, base of the windscreen, z: 1.18 mm is outside the plausible range 342 to 2850 mm,"
                                + " which is 0.12 to 1 of the wheelbase.")),
                RangeChecks.problemsOf(cowlAt(Scale.MILLIMETRES, 2850, 520, 1.18)));
    }

    @Test
    void takesTheEndsOfTheRange() {
        assertEquals(List.of(), RangeChecks.problemsOf(cowlAt(Scale.MILLIMETRES, 3000, -1500, 360)));
        assertEquals(List.of(), RangeChecks.problemsOf(cowlAt(Scale.MILLIMETRES, 3000, 2700, 3000)));
        assertEquals(
                2,
                RangeChecks.problemsOf(cowlAt(Scale.MILLIMETRES, 3000, -1501, 359))
                        .size());
    }

    @Test
    void holdsForASketchWithoutDimensionsAsWell() {
        assertEquals(List.of(), RangeChecks.problemsOf(cowlAt(Scale.UNSCALED, 3.5, 0.6, 1.4)));
        assertEquals(
                List.of("cowl"),
                RangeChecks.problemsOf(cowlAt(Scale.UNSCALED, 3.5, 0.6, 0.0014)).stream()
                        .map(FieldError::field)
                        .toList());
    }
}
