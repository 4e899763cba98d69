package studio.stancebook.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

class DimensionDifferenceTest {

    private static DimensionSetBuilder before() {
        return DimensionSet.builder()
                .tyre(Axle.FRONT, TyreDesignation.parse("265/70R17"))
                .set(Dimension.WHEELBASE, 2850)
                .set(Dimension.SCREEN_ANGLE, 31.5)
                .set(Landmark.COWL, 520, 1160)
                .set(Polyline.UNDERBODY, List.of(new Point(-850, 560), new Point(0, 300)));
    }

    private static List<DimensionChange> changes(DimensionSetBuilder after) {
        return DimensionDifference.between(before().build(), after.build());
    }

    @Test
    void isEmptyBetweenEqualSets() {
        assertEquals(List.of(), changes(before()));
    }

    @Test
    void tellsNumbersWithUnitAndSign() {
        assertEquals(
                List.of(
                        new DimensionChange("Wheelbase", "2850 mm", "2765.5 mm", "\u221284.5 mm"),
                        new DimensionChange("Windscreen angle from the horizontal", "31.5°", "33°", "+1.5°")),
                changes(before().set(Dimension.WHEELBASE, 2765.5).set(Dimension.SCREEN_ANGLE, 33)));
    }

    @Test
    void tellsPointsLinesAndTyres() {
        assertEquals(
                List.of(
                        new DimensionChange("Front tyre", "265/70R17", "255/70R18", ""),
                        new DimensionChange(
                                "Cowl, base of the windscreen",
                                "x 520, z 1160 mm",
                                "x 468, z 1160 mm",
                                "x \u221252, z 0 mm"),
                        new DimensionChange("Underbody", "2 points", "3 points", "")),
                changes(before().tyre(Axle.FRONT, TyreDesignation.parse("255/70R18"))
                        .set(Landmark.COWL, 468, 1160)
                        .set(
                                Polyline.UNDERBODY,
                                List.of(new Point(-850, 560), new Point(0, 300), new Point(900, 280)))));
    }

    @Test
    void tellsWhatCameAndWhatWent() {
        assertEquals(
                List.of(
                        new DimensionChange("Overall width", "", "1900 mm", ""),
                        new DimensionChange("Windscreen angle from the horizontal", "31.5°", "", "")),
                changes(before().set(Dimension.OVERALL_WIDTH, 1900).without("screenAngle")));
    }

    @Test
    void tellsHowWellAValueIsKnown() {
        assertEquals(
                List.of(
                        new DimensionChange("Wheelbase, standard uncertainty", "", "2 mm", ""),
                        new DimensionChange("Wheelbase, origin", "from a drawing", "measured", "")),
                changes(before().uncertainty("wheelbase", 2).origin("wheelbase", Origin.MEASURED)));
    }

    @Test
    void hasNoUnitForTheLengthsOfASketch() {
        assertEquals(
                List.of(
                        new DimensionChange("Scale", "millimetres", "unscaled", ""),
                        new DimensionChange("Wheelbase", "2850", "4", "\u22122846")),
                changes(before().scale(Scale.UNSCALED).set(Dimension.WHEELBASE, 4)));
    }
}
