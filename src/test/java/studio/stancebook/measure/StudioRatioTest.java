package studio.stancebook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Variable;
import studio.stancebook.problem.Impossible;

class StudioRatioTest {

    private static final StudioRatio RATIO = new StudioRatio(
            "overhangs-to-wheelbase",
            "Overhangs to wheelbase",
            List.of(Reading.FRONT_OVERHANG, Reading.REAR_OVERHANG),
            List.of(Reading.WHEELBASE));

    @Test
    void isASumOverASumWithExactSensitivities() {
        Measure measure = MeasureRegistry.with(List.of(RATIO)).get("overhangs-to-wheelbase");
        Measured measured = (Measured) measure.of(new Subject(Sketches.complete()));

        assertEquals(1900.0 / 2800, measured.value(), 1e-12);
        assertEquals(
                1.0 / 2800,
                measured.sensitivities().get(Variable.ofKey("rearOverhang").orElseThrow()),
                1e-15);
        assertEquals("Front overhang + Rear overhang over Wheelbase.", measure.definition());
    }

    @Test
    void refusesAnglesEmptySumsAndUnreadableKeys() {
        Impossible refused = assertThrows(
                Impossible.class, () -> new StudioRatio("X!", " ", List.of(Reading.SCREEN_ANGLE), List.of()));

        assertEquals(
                List.of("key", "name", "numerator", "denominator"),
                refused.errors().stream().map(e -> e.field()).toList());
    }

    @Test
    void mayNotTakeTheKeyOfABuiltInMeasure() {
        StudioRatio twin = new StudioRatio(
                "wheelbase-share", "Again", List.of(Reading.WHEELBASE), List.of(Reading.OVERALL_LENGTH));

        assertThrows(IllegalArgumentException.class, () -> MeasureRegistry.with(List.of(twin)));
    }
}
