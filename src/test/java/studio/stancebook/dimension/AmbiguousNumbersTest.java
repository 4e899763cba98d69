package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.problem.FieldError;

/** ISO 80000-1, 7.3.1 and 7.3.2: point and comma are both decimal signs, and neither may group digits. */
class AmbiguousNumbersTest {

    private static final String BOTH_READINGS = "1,180 could be 1.18 or 1180: write 1180 or 1.18.";

    @Test
    void refusesACommaBeforeThreeDigitsInAFormWithBothReadings() {
        ImpossibleDimensions refused = assertThrows(
                ImpossibleDimensions.class,
                () -> DimensionForm.typed(Map.of(
                                "dimensions.wheelbase", "2850",
                                "dimensions.cowl.x", "520",
                                "dimensions.cowl.z", "1,180"))
                        .read(Origin.DRAWING));

        assertEquals(List.of(new FieldError("dimensions.cowl.z", BOTH_READINGS)), refused.errors());
    }

    @Test
    void refusesItInThePointOfALineToo() {
        ImpossibleDimensions refused = assertThrows(
                ImpossibleDimensions.class,
                () -> DimensionForm.typed(Map.of(
                                "dimensions.wheelbase", "2850",
                                "dimensions.underbody", "-850 560\n1,180 230"))
                        .read(Origin.DRAWING));

        assertEquals(
                List.of(new FieldError("dimensions.underbody[1]", "\"1,180 230\" is not clear: " + BOTH_READINGS)),
                refused.errors());
    }

    @Test
    void saysBothReadingsOfATextSentToTheInterface() {
        ImpossibleDimensions refused = assertThrows(
                ImpossibleDimensions.class,
                () -> DimensionJson.read(Map.of("wheelbase", 2850, "cowl", List.of(520, "1,180")), Origin.DRAWING));

        assertEquals(
                List.of(new FieldError("dimensions.cowl", "A number is needed, not \"1,180\". " + BOTH_READINGS)),
                refused.errors());
    }

    @ParameterizedTest
    @CsvSource({"'2850,5', 2850.5", "2850.500, 2850.5", "2 850, 2850", "'1.234,5', 1234.5", "'0,500 m', 500"})
    void readsWhatCanBeReadInOneWayOnly(String text, double expected) {
        assertEquals(expected, LengthText.parse(text, "mm").number().doubleValue());
    }
}
