package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.OVERALL_HEIGHT;
import static studio.stancebook.dimension.Reading.OVERALL_LENGTH;
import static studio.stancebook.dimension.Reading.ROCKER_AT_MID_WHEELBASE;

import java.util.Arrays;
import java.util.List;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.Areas;
import studio.stancebook.geometry.Line;
import studio.stancebook.geometry.Point;

/**
 * Areas of the side view. Their first-order uncertainty takes each polyline as drawn in the right shape but out of place as
 * a whole (outline), or with its edge a little too far out (side glass): common practice, no source.
 */
final class SideAreas {

    private SideAreas() {}

    static Formula.Result profileFill(Subject s) {
        Estimate box = s.get(OVERALL_LENGTH).times(s.get(OVERALL_HEIGHT));
        BodyRing body = BodyRing.of(s.set());
        Areas.of(body.points()); // refuses an outline that crosses itself
        return Formula.Result.of(body.area().over(box));
    }

    static Formula.Result glassAreaShare(Subject s) {
        List<Point> glass = s.set().points(Polyline.DAYLIGHT_OPENING);
        Estimate edge = Estimate.of(Variable.GLASS_EDGE, 0).times(perimeter(glass));
        Estimate glassArea = Estimate.constant(Areas.of(glass)).plus(edge);
        Estimate sideArea = areaAboveRocker(s);
        return sideArea.value() > 0
                ? Formula.Result.of(glassArea.over(sideArea))
                : Formula.Result.none(NotMeasurable.Why.DEGENERATE);
    }

    /**
     * Raising the rocker line takes off a strip as wide as each chord that the line cuts from the body; moving the outline
     * does the opposite.
     */
    private static Estimate areaAboveRocker(Subject s) {
        List<Point> body = BodyRing.of(s.set()).points();
        Line rocker = new Line(
                new Point(0, rockerAt(s, 0).value()),
                new Point(1000, rockerAt(s, 1000).value()));
        double[] crossings = crossings(body, rocker);
        double slope = (rocker.to().z() - rocker.from().z()) / 1000;
        Estimate area = Estimate.constant(Areas.above(body, rocker));
        for (int i = 0; i + 1 < crossings.length; i += 2) {
            double chord = crossings[i + 1] - crossings[i];
            Estimate height = rockerAt(s, (crossings[i] + crossings[i + 1]) / 2);
            area = area.minus(height.minus(Estimate.constant(height.value())).times(chord))
                    .plus(Estimate.of(Variable.z(Polyline.OUTLINE), 0).times(chord))
                    .minus(Estimate.of(Variable.x(Polyline.OUTLINE), 0).times(chord * slope));
        }
        return area;
    }

    /** The height of the rocker line at {@code x}: through both landmarks, else level. */
    private static Estimate rockerAt(Subject s, double x) {
        if (!s.drawn(Landmark.ROCKER_FRONT, Landmark.ROCKER_REAR)) {
            return s.get(ROCKER_AT_MID_WHEELBASE);
        }
        Point front = s.set().landmark(Landmark.ROCKER_FRONT).orElseThrow();
        Point rear = s.set().landmark(Landmark.ROCKER_REAR).orElseThrow();
        Estimate frontX = Estimate.of(Variable.x(Landmark.ROCKER_FRONT), front.x());
        Estimate frontZ = Estimate.of(Variable.z(Landmark.ROCKER_FRONT), front.z());
        Estimate run = Estimate.of(Variable.x(Landmark.ROCKER_REAR), rear.x()).minus(frontX);
        Estimate rise = Estimate.of(Variable.z(Landmark.ROCKER_REAR), rear.z()).minus(frontZ);
        return frontZ.plus(rise.over(run).times(Estimate.constant(x).minus(frontX)));
    }

    /** Where the ring crosses the line, from front to rear. */
    private static double[] crossings(List<Point> ring, Line line) {
        double[] found = new double[ring.size()];
        int count = 0;
        Point before = ring.get(ring.size() - 1);
        for (Point point : ring) {
            double from = before.z() - line.heightAt(before.x());
            double to = point.z() - line.heightAt(point.x());
            if (from < 0 != to < 0) {
                found[count++] = before.x() + from / (from - to) * (point.x() - before.x());
            }
            before = point;
        }
        double[] crossings = Arrays.copyOf(found, count);
        Arrays.sort(crossings);
        return crossings;
    }

    private static double perimeter(List<Point> ring) {
        double sum = 0;
        Point before = ring.get(ring.size() - 1);
        for (Point point : ring) {
            sum += Math.hypot(point.x() - before.x(), point.z() - before.z());
            before = point;
        }
        return sum;
    }
}
