package studio.stancebook.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class UnderbodyAnglesTest {

    private static final double EXACT = 1e-9;

    @Test
    void approachIsTheTangentFromTheTyreToThePoint() {
        // u = 600, v = 0, r = 300: asin(300 / 600) = 30 degrees
        UnderbodyAngles angles = angles(new Point(-600, 300));

        assertEquals(30, angles.approachDeg().orElseThrow(), EXACT);
        assertEquals(Optional.of(new Point(-600, 300)), angles.approachTouch());
        assertTrue(angles.departureDeg().isEmpty());
        assertTrue(angles.rampDeg().isEmpty());
        assertTrue(angles.groundClearanceMm().isEmpty());
    }

    @Test
    void rampIsTheSumOfBothTangents() {
        // 600 from either centre and level with it: 30 + 30 degrees
        UnderbodyAngles angles =
                UnderbodyAngles.of(1200, TyreArc.onGround(0, 300), TyreArc.onGround(1200, 300), points(600, 300));

        assertEquals(60, angles.rampDeg().orElseThrow(), EXACT);
    }

    @Test
    void anUprightFaceAheadOfTheTyreLimitsAtItsLowerEnd() {
        assertEquals(30, angles(points(-600, 700, -600, 300)).approachDeg().orElseThrow(), EXACT);
    }

    @Test
    void nothingLimitsFromNinetyDegreesOn() {
        // straight above the front edge of the tyre: u = r
        assertTrue(angles(points(-300, 500, -200, 900)).approachDeg().isEmpty());
        assertTrue(angles(points(-300.001, 500)).approachDeg().orElseThrow() < 90);
    }

    @Test
    void pointsInsideTheTyreOutlineNeverLimit() {
        UnderbodyAngles angles = angles(points(-280, 250, -100, 20, 100, 20, 280, 250));

        assertTrue(angles.approachDeg().isEmpty());
        assertTrue(angles.rampDeg().isEmpty());
        assertEquals(20, angles.groundClearanceMm().orElseThrow());
    }

    @Test
    void anEdgeThatLeavesTheTyreOutlineLimitsFromThereOn() {
        UnderbodyAngles out = angles(points(200, 250, 900, 150));
        UnderbodyAngles endOnly = angles(points(900, 150));

        assertTrue(out.rampDeg().orElseThrow() <= endOnly.rampDeg().orElseThrow());
        assertEquals(150, out.groundClearanceMm().orElseThrow());
    }

    @Test
    void anEdgeAcrossBothTyresIsSearchedBetweenThem() {
        UnderbodyAngles across = angles(points(-500, 200, 3300, 200));
        UnderbodyAngles middle = angles(points(1400, 200));

        assertEquals(middle.rampDeg().orElseThrow(), across.rampDeg().orElseThrow(), EXACT);
        assertEquals(1400, across.rampTouch().orElseThrow().x(), 1e-6);
    }

    @Test
    void aThousandPointsOnAFlatFloorGiveWhatTwoGive() {
        List<Point> dense = new ArrayList<>();
        for (int i = 0; i <= 1000; i++) {
            dense.add(new Point(400 + 1.9 * i, 180));
        }
        UnderbodyAngles two = angles(points(400, 180, 2300, 180));
        UnderbodyAngles thousand = angles(dense);

        assertEquals(two.rampDeg().orElseThrow(), thousand.rampDeg().orElseThrow(), 1e-12);
        assertEquals(1400, thousand.rampTouch().orElseThrow().x(), 1e-6);
    }

    @Test
    void aPointBelowTheGroundHoldsTheAngleAtZero() {
        UnderbodyAngles angles = angles(points(-600, -10, 1400, -10, 3400, -10));

        assertEquals(0, angles.approachDeg().orElseThrow());
        assertEquals(0, angles.departureDeg().orElseThrow());
        assertEquals(0, angles.rampDeg().orElseThrow());
        assertEquals(AnglePartials.NONE, angles.ramp().orElseThrow().partials().orElseThrow());
    }

    @Test
    void anEdgeThatPassesBelowTheTyreHoldsTheAngleAtZero() {
        UnderbodyAngles angles = angles(points(-900, 300, 900, -400));

        assertEquals(0, angles.approachDeg().orElseThrow());
        assertEquals(new Point(0, -50), angles.approachTouch().orElseThrow());
    }

    @Test
    void aTouchOnTheTyreOutlineHasNoPartials() {
        // 3-4-5: (-240, 120) lies on the circle of 300 about (0, 300); the tangent there has atan(240 / 180)
        LimitedAngle approach = angles(points(-240, 120)).approach().orElseThrow();

        assertEquals(Math.toDegrees(Math.atan2(240, 180)), approach.deg(), 1e-6);
        assertFalse(approach.partials().isPresent());
    }

    @Test
    void repeatedPointsChangeNothing() {
        UnderbodyAngles once = angles(points(-700, 300, 500, 200, 2300, 190, 3400, 300));
        UnderbodyAngles twice =
                angles(points(-700, 300, -700, 300, 500, 200, 500, 200, 2300, 190, 2300, 190, 3400, 300, 3400, 300));

        assertEquals(once, twice);
    }

    @Test
    void clearanceIsClippedAtTheAxles() {
        // falls from 300 at x = -100 to 100 at x = 100: 200 at the axle; rises again behind the rear axle
        UnderbodyAngles angles = angles(points(-100, 300, 100, 100, 2700, 100, 2900, -100));

        assertEquals(0, angles.groundClearanceMm().orElseThrow(), EXACT);
        assertEquals(2800, angles.lowest().orElseThrow().x());
    }

    @Test
    void refusesTyresThatOverlap() {
        String message = assertThrows(
                        DegenerateShape.class,
                        () -> UnderbodyAngles.of(
                                599, TyreArc.onGround(0, 300), TyreArc.onGround(599, 300), points(300, 200)))
                .detail();

        assertTrue(message.contains("599"), message);
        assertTrue(message.contains("300"), message);
    }

    @Test
    void acceptsTyresThatTouch() {
        UnderbodyAngles angles =
                UnderbodyAngles.of(600, TyreArc.onGround(0, 300), TyreArc.onGround(600, 300), points(300, 300));

        assertTrue(angles.rampDeg().isEmpty() || angles.rampDeg().orElseThrow() <= 180);
    }

    @Test
    void refusesWhatIsNoSideView() {
        TyreArc front = TyreArc.onGround(0, 0);
        List<Point> underbody = points(1, 1);

        assertThrows(DegenerateShape.class, () -> UnderbodyAngles.of(0, front, front, underbody));
        assertThrows(DegenerateShape.class, () -> UnderbodyAngles.of(-5, front, TyreArc.onGround(-5, 0), underbody));
        assertThrows(
                IllegalArgumentException.class,
                () -> UnderbodyAngles.of(2800, front, TyreArc.onGround(2700, 0), underbody));
        assertThrows(
                IllegalArgumentException.class,
                () -> UnderbodyAngles.of(2800, front, TyreArc.onGround(2800, 0), List.of()));
        assertThrows(IllegalArgumentException.class, () -> new TyreArc(0, 300, -1));
        assertThrows(IllegalArgumentException.class, () -> new TyreArc(0, 300, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new TyreArc(Double.NaN, 300, 300));
        assertThrows(IllegalArgumentException.class, () -> new Point(0, Double.POSITIVE_INFINITY));
    }

    private static UnderbodyAngles angles(Point... underbody) {
        return angles(List.of(underbody));
    }

    private static UnderbodyAngles angles(List<Point> underbody) {
        return UnderbodyAngles.of(2800, TyreArc.onGround(0, 300), TyreArc.onGround(2800, 300), underbody);
    }

    private static List<Point> points(double... coordinates) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return points;
    }
}
