package studio.stancebook.tyre;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.problem.Impossible;

class NearestSizesTest {

    @Test
    void ranksByDistanceAndLeavesNoNearerSizeOut() {
        List<NearestSize> nearest = NearestSizes.to(777.3, 50);

        double worst = Math.abs(nearest.get(49).differenceMm());
        long nearer = NearestSizes.sizes()
                .filter(size -> Math.abs(size.overallDiameterMm() - 777.3) < worst)
                .count();
        assertTrue(nearer < 50, "more than 49 sizes are nearer than the 50th");
        assertEquals(
                nearest.stream()
                        .sorted(Comparator.comparingDouble(size -> Math.abs(size.differenceMm())))
                        .toList(),
                nearest);
    }

    @Test
    void listsASizeForItsOwnDiameterWithoutDifference() {
        // 265/70R16: 406 + 2 x 186 = 778
        List<NearestSize> nearest = NearestSizes.to(778, 40);

        NearestSize own = nearest.stream()
                .filter(size -> size.designation().text().equals("265/70R16"))
                .findFirst()
                .orElseThrow();
        assertEquals(0, own.differenceMm());
        assertEquals(778, own.overallDiameterMm());
    }

    @Test
    void signsTheDifferencePositiveForALargerTyre() {
        NearestSizes.to(777.3, 5)
                .forEach(size -> assertEquals(size.overallDiameterMm() - 777.3, size.differenceMm(), 1e-12));
    }

    @Test
    void keepsEqualDifferencesInOrderOfWidth() {
        List<NearestSize> exact = NearestSizes.to(780, 200).stream()
                .filter(size -> size.differenceMm() == 0)
                .toList();

        List<Double> widths =
                exact.stream().map(size -> size.designation().sectionWidthMm()).toList();
        assertTrue(exact.size() > 1);
        assertEquals(widths.stream().sorted().toList(), widths);
    }

    /** Section width 125-355 step 10, aspect ratio 25-85 step 5, rim code 13-24 (domain page): 24 x 13 x 12 sizes. */
    @Test
    void enumeratesEverySizeOfTheDomainPage() {
        assertEquals(24 * 13 * 12, NearestSizes.sizes().distinct().count());
    }

    /** 125/25R24: section height 31 mm; 355/85R13: section wider than the rim (330 mm). */
    @Test
    void marksCombinationsThatNoRoadTyreHas() {
        assertTrue(nearest(672, "125/25R24").unusual());
        assertTrue(nearest(934, "355/85R13").unusual());
        assertFalse(nearest(804, "265/70R17").unusual());
        assertFalse(nearest(632, "205/55R16").unusual());
    }

    private static NearestSize nearest(double diameterMm, String size) {
        return NearestSizes.to(diameterMm, 200).stream()
                .filter(found -> found.designation().text().equals(size))
                .findFirst()
                .orElseThrow();
    }

    /** The complete enumeration is written out here anew. */
    @ParameterizedTest
    @ValueSource(doubles = {550, 601.5, 632, 655, 700.2, 733, 780, 804, 861, 889, 950, 976})
    void comesAsNearAsTheCompleteEnumerationForRoadVehicles(double wantedMm) {
        double best = Double.POSITIVE_INFINITY;
        for (int width = 125; width <= 355; width += 10) {
            for (int aspect = 25; aspect <= 85; aspect += 5) {
                for (int rim = 13; rim <= 24; rim++) {
                    long sectionHeight = (2L * width * aspect + 100) / 200;
                    long diameter = (rim * 508L + 10) / 20 + 2 * sectionHeight;
                    best = Math.min(best, Math.abs(diameter - wantedMm));
                }
            }
        }
        assertEquals(best, Math.abs(NearestSizes.to(wantedMm, 1).get(0).differenceMm()), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {299.9, 1300.1, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesADiameterThatNoTyreHas(double diameterMm) {
        Impossible refusal = assertThrows(Impossible.class, () -> NearestSizes.to(diameterMm, 1));

        assertTrue(refusal.detail().contains(String.valueOf(diameterMm)), refusal.detail());
        assertTrue(refusal.detail().contains("300 to 1300 mm"), refusal.detail());
        assertEquals("diameterMm", refusal.errors().get(0).field());
    }

    @ParameterizedTest
    @CsvSource({"300, 1", "1300, 200"})
    void acceptsTheEndsOfTheRanges(double diameterMm, int limit) {
        assertEquals(limit, NearestSizes.to(diameterMm, limit).size());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 201})
    void refusesALimitOutsideItsRange(int limit) {
        Impossible refusal = assertThrows(Impossible.class, () -> NearestSizes.to(780, limit));

        assertEquals("limit", refusal.errors().get(0).field());
    }
}
