package studio.stancebook.dimension.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.ShownUnits;

class FormUnitsTest {

    @BeforeEach
    void readInchesAndFromTheVertical() {
        new ShownUnits(LengthUnit.INCH, AngleReference.VERTICAL).use();
    }

    @AfterEach
    void reset() {
        ShownUnits.reset();
    }

    private static DimensionSet read(DimensionForm form) {
        return form.read(Origin.MEASURED);
    }

    @Test
    void showsARecordedSetInInchesAndReadsItBackUnchanged() {
        DimensionSet set = DimensionSet.builder()
                .origin(Origin.MEASURED)
                .set(Dimension.WHEELBASE, 2850)
                .set(Dimension.FRONT_OVERHANG, 900.001)
                .set(Dimension.SCREEN_ANGLE, 28)
                .set(Landmark.COWL, 498.5, 1016)
                .build();
        DimensionForm form = DimensionForm.of(set);

        assertEquals("112.20472", form.text("dimensions.wheelbase"));
        assertEquals("40", form.text("dimensions.cowl.z"));
        assertEquals("62", form.text("dimensions.screenAngle"));
        assertEquals(set, read(form));
    }

    /** Whole and tenth millimetres over the range of a wheelbase. */
    @Test
    void readsEveryMillimetreBackAsItIs() {
        for (int tenths = 10_000; tenths <= 60_000; tenths += 7) {
            double mm = tenths / 10.0;
            DimensionSet set = DimensionSet.builder()
                    .origin(Origin.MEASURED)
                    .set(Dimension.WHEELBASE, mm)
                    .build();

            assertEquals(
                    mm, read(DimensionForm.of(set)).scalar(Dimension.WHEELBASE).orElseThrow());
        }
    }

    /** 112 1/32 in = 112.03125 x 25.4 = 2845.59375 mm; 112 1/64 = 112.015625 x 25.4 = 2845.196875 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"112 2844.8", "112.2 2849.88", "112.03125 2845.59375", "112.015625 2845.196875"})
    void keepsTypedInchesExactly(String typedAndMm) {
        String[] parts = typedAndMm.split(" ");
        DimensionForm form = DimensionForm.typed(Map.of("dimensions.bareUnit", "in", "dimensions.wheelbase", parts[0]));

        assertEquals(
                Double.parseDouble(parts[1]),
                read(form).scalar(Dimension.WHEELBASE).orElseThrow());
    }

    @Test
    void labelsEntriesByWhatTheyAreReadIn() {
        Entry wheelbase = entry(DimensionForm.blank(), "dimensions.wheelbase");
        Entry screen = entry(DimensionForm.blank(), "dimensions.screenAngle");

        assertEquals("in", wheelbase.unit());
        assertEquals("39.38 to 236.22 in", wheelbase.hint());
        assertEquals("Windscreen angle from the vertical", screen.label());
        assertEquals("-20 to 80°", screen.hint());
    }

    @Test
    void leavesARefusedFormAsItWasTyped() {
        Map<String, String> typed = new HashMap<>();
        typed.put("dimensions.bareUnit", "mm");
        typed.put("dimensions.wheelbase", "28x50");
        DimensionForm form = DimensionForm.typed(typed);

        assertEquals("28x50", entry(form, "dimensions.wheelbase").value());
        assertEquals("mm", entry(form, "dimensions.wheelbase").unit());
        assertTrue(entry(form, "dimensions.wheelbase").hint().endsWith("mm"));
    }

    private static Entry entry(DimensionForm form, String name) {
        return form.sections().stream()
                .flatMap(section -> section.entries().stream())
                .filter(entry -> entry.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
