package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class ModifiedZTest {

    /** Data of NIST/SEMATECH e-Handbook 1.3.5.17.1 (entered from memory); scores by R 4.2.2. */
    @Test
    void scoresAndMarksTheHandbookExample() {
        JsonNode reference = ReferenceFile.json("outliers_reference.json").get("grubbs");
        double[] x = ReferenceFile.doubles(reference.get("x"));
        double[] expected = ReferenceFile.doubles(reference.get("modified_z"));
        SortedColumn column = SortedColumn.of(x);
        assertEquals(reference.get("mad_raw").asDouble(), column.medianAbsoluteDeviation(), 1e-12);
        assertEquals(
                reference.get("mad_R_1.4826").asDouble(),
                column.summary().scaledMedianAbsoluteDeviation().orElseThrow(),
                1e-12);
        ModifiedZ screen = ModifiedZ.by(column);
        for (int i = 0; i < x.length; i++) {
            ModifiedZ.ScreenedValue screening = screen.screen(x[i]);
            assertEquals(expected[i], screening.score().orElseThrow(), 1e-10 * Math.abs(expected[i]));
            assertEquals(reference.get("flag_gt_3.5").get(i).asBoolean(), screening.query());
            assertEquals(ModifiedZ.SpreadKind.MEDIAN_DEVIATION, screening.scale());
        }
    }

    @Test
    void usesTheConstantsOfTheReference() {
        JsonNode constants = ReferenceFile.json("outliers_reference.json").get("constants");
        assertEquals(constants.get("k_0.6745").asDouble(), ModifiedZ.FACTOR);
        assertEquals(constants.get("R_mad_constant").asDouble(), Spread.SD_PER_MEDIAN_DEVIATION);
        assertEquals(constants.get("meanAD_constant").asDouble(), Spread.SD_PER_MEAN_DEVIATION);
    }

    @Test
    void fallsBackToTheMeanDeviationWhereMostValuesAreEqual() {
        JsonNode reference = ReferenceFile.json("outliers_reference.json").get("mad_zero_case");
        double[] x = ReferenceFile.doubles(reference.get("x"));
        double[] expected = ReferenceFile.doubles(reference.get("fallback_z"));
        ModifiedZ screen = ModifiedZ.by(SortedColumn.of(x));
        for (int i = 0; i < x.length; i++) {
            ModifiedZ.ScreenedValue screening = screen.screen(x[i]);
            assertEquals(expected[i], screening.score().orElseThrow(), 1e-10);
            assertEquals(ModifiedZ.SpreadKind.MEAN_DEVIATION, screening.scale());
            assertEquals(x[i] == 9, screening.query());
        }
    }

    @Test
    void queriesAnyOtherValueWhereAllAreEqual() {
        ModifiedZ screen = ModifiedZ.by(SortedColumn.of(2.5, 2.5, 2.5));
        ModifiedZ.ScreenedValue other = screen.screen(2.6);
        assertEquals(ModifiedZ.SpreadKind.ALL_EQUAL, other.scale());
        assertEquals(OptionalDouble.empty(), other.score());
        assertTrue(other.query());
        assertFalse(screen.screen(2.5).query());
    }

    @Test
    void isSilentBelowThreeValues() {
        for (SortedColumn column :
                new SortedColumn[] {SortedColumn.empty(), SortedColumn.of(1), SortedColumn.of(1, 2)}) {
            ModifiedZ.ScreenedValue screening = ModifiedZ.by(column).screen(1e9);
            assertEquals(
                    new ModifiedZ.ScreenedValue(1e9, OptionalDouble.empty(), ModifiedZ.SpreadKind.TOO_FEW, false),
                    screening);
        }
        assertTrue(ModifiedZ.by(SortedColumn.of(1, 2, 3)).screen(1e9).query());
    }

    @Test
    void marksAboveTheCutOffAndNotAtIt() {
        for (double sign : new double[] {1, -1}) {
            assertFalse(ModifiedZ.isBeyondCutOff(sign * 3.5));
            assertTrue(ModifiedZ.isBeyondCutOff(sign * Math.nextUp(3.5)));
        }
    }

    /** Half of the values lie within one MAD of the median: by hand, MAD 1 and median 3. */
    @Test
    void scoresByHand() {
        ModifiedZ screen = ModifiedZ.by(SortedColumn.of(1, 2, 3, 4, 5));
        assertEquals(-2 * 0.6745, screen.screen(1).score().orElseThrow(), 1e-14);
        assertTrue(screen.screen(3 + 5.19).query());
        assertFalse(screen.screen(3 + 5.18).query());
    }

    @Test
    void keepsItsScoresWhenScaledAndShiftedAndMirrorsThem() {
        Random random = new Random(6);
        double[] x = random.doubles(23, -1, 1).toArray();
        ModifiedZ screen = ModifiedZ.by(SortedColumn.of(x));
        ModifiedZ moved = ModifiedZ.by(
                SortedColumn.of(Arrays.stream(x).map(v -> 25.4 * v + 300).toArray()));
        ModifiedZ mirrored =
                ModifiedZ.by(SortedColumn.of(Arrays.stream(x).map(v -> -v).toArray()));
        for (double v : x) {
            double score = screen.screen(v).score().orElseThrow();
            assertEquals(score, moved.screen(25.4 * v + 300).score().orElseThrow(), 1e-12);
            assertEquals(-score, mirrored.screen(-v).score().orElseThrow(), 1e-12);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e101})
    void refusesWhatIsNoNumber(double value) {
        ModifiedZ screen = ModifiedZ.by(SortedColumn.of(1, 2, 3));
        assertThrows(IllegalArgumentException.class, () -> screen.screen(value));
    }
}
