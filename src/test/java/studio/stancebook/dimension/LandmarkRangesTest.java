package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

    /** A negative wheelbase with a landmark was an error of the server. */
    @ParameterizedTest
    @ValueSource(doubles = {-2850, 0})
    void namesOnlyTheWheelbaseWhereThatIsWrong(double wheelbase) {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, wheelbase)
                .set(Landmark.COWL, 500, 1160)
                .build();
        for (DimensionSet one :
                List.of(set, set.toBuilder().scale(Scale.UNSCALED).build())) {
            assertEquals(
                    List.of("wheelbase"),
                    RangeChecks.problemsOf(one).stream().map(FieldError::field).toList());
        }
    }
}
