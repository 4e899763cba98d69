package studio.stancebook.drawing.sideview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.paper.Step;

/** Wheel openings and the bonnet's edge are drawn where they are recorded; z upwards is y downwards. */
class ArchOpeningsTest {

    private static final DimensionSet DRAWN_IN = Sketches.offRoader();

    private static final DimensionSet RECORDED = DRAWN_IN.toBuilder()
            .set(Landmark.ARCH_FRONT_FORE, -470, 440)
            .set(Landmark.ARCH_FRONT_AFT, 540, 430)
            .build();

    private static List<Step> steps(DimensionSet set) {
        return SideView.of(set, SideViewOptions.of("arch", "Arch")).wide().layers().stream()
                .flatMap(layer -> layer.strokes().stream())
                .flatMap(stroke -> stroke.path().steps().stream())
                .toList();
    }

    private static boolean curveEndsAt(DimensionSet set, double x, double z) {
        return steps(set).stream()
                .anyMatch(step -> step instanceof Step.CurveTo curve && curve.x() == x && curve.y() == -z);
    }

    @Test
    void goThroughTheirRecordedEdges() {
        assertTrue(curveEndsAt(RECORDED, 540, 430));
        assertTrue(steps(RECORDED).stream()
                .anyMatch(step -> step instanceof Step.LineTo line && line.x() == -470 && line.y() == -440));
    }

    @Test
    void areArcsAroundTheTyreWhereOneEdgeIsMissing() {
        DimensionSet one =
                DRAWN_IN.toBuilder().set(Landmark.ARCH_FRONT_FORE, -470, 440).build();

        assertEquals(steps(DRAWN_IN), steps(one));
    }

    @Test
    void theNoseGoesThroughTheBonnetsEdge() {
        DimensionSet edged =
                DRAWN_IN.toBuilder().set(Landmark.BONNET_EDGE, -760, 1010).build();

        assertTrue(curveEndsAt(edged, -760, 1010));
    }
}
