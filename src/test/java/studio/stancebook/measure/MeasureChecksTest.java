package studio.stancebook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Disagreement;

class MeasureChecksTest {

    private static double approachOf(DimensionSet set) {
        return ((Measured) MeasureRegistry.builtIn().get("approach-angle").of(new Subject(set))).value();
    }

    @Test
    void acceptATypedAngleThatTheUnderbodyConfirms() {
        DimensionSet set = Sketches.complete();
        DimensionSet typed = set.toBuilder()
                .set(Dimension.APPROACH_ANGLE, approachOf(set) + 0.4)
                .build();

        assertTrue(MeasureChecks.disagreements(typed).isEmpty());
    }

    @Test
    void reportATypedAngleThatTheUnderbodyContradicts() {
        DimensionSet set = Sketches.complete();
        DimensionSet typed = set.toBuilder()
                .set(Dimension.APPROACH_ANGLE, approachOf(set) + 10)
                .build();

        Disagreement found = MeasureChecks.disagreements(typed).get(0);

        assertEquals(List.of("approachAngle", "underbody"), found.keys());
        assertEquals(10, found.gap(), 1e-9);
    }

    @Test
    void haveNothingToCompareWithoutAnUnderbody() {
        DimensionSet typed = Sketches.complete().toBuilder()
                .without("underbody")
                .set(Dimension.APPROACH_ANGLE, 80)
                .build();

        assertTrue(MeasureChecks.disagreements(typed).isEmpty());
    }
}
