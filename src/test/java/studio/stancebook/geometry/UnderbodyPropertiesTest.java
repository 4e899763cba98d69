package studio.stancebook.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any side view, tried on made-up ones, and a search by brute force that knows only the definition. */
class UnderbodyPropertiesTest {

    private static final double SAME_DEG = 1e-9;

    static Stream<SideView> sideViews() {
        return SideView.made(20240131, 200);
    }

    @ParameterizedTest
    @MethodSource("sideViews")
    void morePointsOnStraightEdgesChangeNothing(SideView view) {
        assertSame(view.angles(), view.withPointsOnEdges(new Random(7), 60).angles());
    }

    @ParameterizedTest
    @MethodSource("sideViews")
    void scalingChangesNoAngle(SideView view) {
        assertSame(view.angles(), view.scaled(1 / 2743.0).angles());
        assertSame(view.angles(), view.scaled(1000).angles());
    }

    @ParameterizedTest
    @MethodSource("sideViews")
    void mirroringSwapsApproachAndDeparture(SideView view) {
        UnderbodyAngles angles = view.angles();
        UnderbodyAngles mirrored = view.mirrored().angles();

        assertSameDeg(angles.approachDeg(), mirrored.departureDeg());
        assertSameDeg(angles.departureDeg(), mirrored.approachDeg());
        assertSameDeg(angles.rampDeg(), mirrored.rampDeg());
        assertEquals(
                angles.groundClearanceMm().orElseThrow(),
                mirrored.groundClearanceMm().orElseThrow(),
                1e-9);
    }

    @ParameterizedTest
    @MethodSource("sideViews")
    void theDirectionOfThePolylineDoesNotMatter(SideView view) {
        assertSame(view.angles(), view.reversed().angles());
    }

    @ParameterizedTest
    @MethodSource("sideViews")
    void noPointOfAnyEdgeAllowsLess(SideView view) {
        UnderbodyAngles angles = view.angles();

        assertLeast(angles.approachDeg(), least(view, BruteForce::approachDeg));
        assertLeast(angles.departureDeg(), least(view, BruteForce::departureDeg));
        assertLeast(angles.rampDeg(), least(view, BruteForce::rampDeg));
    }

    @ParameterizedTest
    @MethodSource("sideViews")
    void theTouchAllowsExactlyTheAngle(SideView view) {
        UnderbodyAngles angles = view.angles();

        angles.approach()
                .ifPresent(one -> assertEquals(one.deg(), BruteForce.approachDeg(view, one.touch()), SAME_DEG));
        angles.departure()
                .ifPresent(one -> assertEquals(one.deg(), BruteForce.departureDeg(view, one.touch()), SAME_DEG));
        angles.ramp().ifPresent(one -> assertEquals(one.deg(), BruteForce.rampDeg(view, one.touch()), SAME_DEG));
    }

    @ParameterizedTest
    @MethodSource("sideViews")
    void partialsAreTheCentralDifferences(SideView view) {
        UnderbodyAngles angles = view.angles();

        angles.approach().ifPresent(one -> new Differences(view, UnderbodyAngles::approachDeg).check(one));
        angles.departure().ifPresent(one -> new Differences(view, UnderbodyAngles::departureDeg).check(one));
        angles.ramp().ifPresent(one -> new Differences(view, UnderbodyAngles::rampDeg).check(one));
    }

    /** The claim that {@link RampSearch} rests on: along an edge the sum falls, then rises, and does not fall again. */
    @ParameterizedTest
    @MethodSource("sideViews")
    void alongAnEdgeTheSumHasOneMinimumBetweenTheShadows(SideView view) {
        for (int i = 1; i < view.underbody().size(); i++) {
            Point from = view.underbody().get(i - 1);
            Point to = view.underbody().get(i);
            boolean risen = false;
            double before = Double.NaN;
            for (int step = 0; step <= 400; step++) {
                double here = BruteForce.rampDeg(view, SideView.on(from, to, step / 400.0));
                boolean gap = Double.isInfinite(here) || Double.isInfinite(before);
                assertTrue(gap || !risen || here >= before - 1e-9, "falls again on edge " + i);
                risen = !gap && (risen || here > before + 1e-9);
                before = here;
            }
        }
    }

    @Test
    void theMadeUpSideViewsTryAllKindsOfTouch() {
        List<UnderbodyAngles> all = sideViews().map(SideView::angles).toList();
        long inside = sideViews()
                .filter(view -> view.angles().rampTouch().isPresent()
                        && !view.underbody().contains(view.angles().rampTouch().orElseThrow()))
                .count();

        assertTrue(inside > 30, "ramp inside an edge: " + inside);
        assertTrue(all.size() - inside > 30, "ramp at a point: " + (all.size() - inside));
        assertTrue(all.stream().anyMatch(angles -> angles.approach().isEmpty()));
        assertTrue(all.stream().filter(angles -> angles.approach().isPresent()).count() > 100);
    }

    private static void assertSame(UnderbodyAngles expected, UnderbodyAngles actual) {
        assertSameDeg(expected.approachDeg(), actual.approachDeg());
        assertSameDeg(expected.departureDeg(), actual.departureDeg());
        assertSameDeg(expected.rampDeg(), actual.rampDeg());
    }

    private static void assertSameDeg(OptionalDouble expected, OptionalDouble actual) {
        assertEquals(expected.isPresent(), actual.isPresent());
        assertEquals(expected.orElse(90), actual.orElse(90), SAME_DEG);
    }

    private static void assertLeast(OptionalDouble angle, double bruteForce) {
        double deg = angle.orElse(Double.POSITIVE_INFINITY);
        assertTrue(deg <= bruteForce + SAME_DEG, "found " + deg + ", but a point allows only " + bruteForce);
    }

    private static double least(SideView view, ToDoubleBiFunction<SideView, Point> allowed) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < view.underbody().size(); i++) {
            for (int step = 0; step <= 500; step++) {
                Point point = SideView.on(
                        view.underbody().get(i - 1), view.underbody().get(i), step / 500.0);
                least = Math.min(least, allowed.applyAsDouble(view, point));
            }
        }
        return least;
    }

    /** Written from the definition in domain terms, with angles instead of the products that the search compares. */
    private static final class BruteForce {

        static double approachDeg(SideView view, Point point) {
            return allowedDeg(view.front(), view.front().centreX() - point.x(), point);
        }

        static double departureDeg(SideView view, Point point) {
            return allowedDeg(view.rear(), point.x() - view.rear().centreX(), point);
        }

        static double rampDeg(SideView view, Point point) {
            return allowedDeg(view.front(), point.x() - view.front().centreX(), point)
                    + allowedDeg(view.rear(), view.rear().centreX() - point.x(), point);
        }

        private static double allowedDeg(TyreArc tyre, double beyond, Point point) {
            double above = point.z() - tyre.centreHeight();
            double distance = Math.hypot(beyond, above);
            if (beyond <= 0 || distance < tyre.radius()) {
                return Double.POSITIVE_INFINITY;
            }
            double deg = Math.toDegrees(Math.atan2(above, beyond) + Math.asin(tyre.radius() / distance));
            return deg < 90 ? deg : Double.POSITIVE_INFINITY;
        }
    }

    /** Each input moved by a little to either side. */
    private record Differences(SideView view, Function<UnderbodyAngles, OptionalDouble> angle) {

        private static final double STEP_MM = 1e-4;

        void check(LimitedAngle limited) {
            AnglePartials partials = limited.partials().orElseThrow();
            near(partials.touchX(), step -> of(view.withUnderbody(shifted(step, 0))));
            near(partials.touchZ(), step -> of(view.withUnderbody(shifted(0, step))));
            near(partials.wheelbase(), step -> of(view.withRear(moved(view.rear(), step, 0, 0))));
            near(partials.frontCentreHeight(), step -> of(view.withFront(moved(view.front(), 0, step, 0))));
            near(partials.frontRadius(), step -> of(view.withFront(moved(view.front(), 0, 0, step))));
            near(partials.rearCentreHeight(), step -> of(view.withRear(moved(view.rear(), 0, step, 0))));
            near(partials.rearRadius(), step -> of(view.withRear(moved(view.rear(), 0, 0, step))));
        }

        private double of(SideView changed) {
            return angle.apply(changed.angles()).orElseThrow();
        }

        private List<Point> shifted(double dx, double dz) {
            return view.underbody().stream()
                    .map(point -> new Point(point.x() + dx, point.z() + dz))
                    .toList();
        }

        private static TyreArc moved(TyreArc tyre, double dx, double dz, double dr) {
            return new TyreArc(tyre.centreX() + dx, tyre.centreHeight() + dz, tyre.radius() + dr);
        }

        private static void near(double partial, DoubleUnaryOperator angleAt) {
            double difference = (angleAt.applyAsDouble(STEP_MM) - angleAt.applyAsDouble(-STEP_MM)) / (2 * STEP_MM);
            assertEquals(difference, partial, 1e-6 * Math.max(1, Math.abs(partial)));
        }
    }
}
