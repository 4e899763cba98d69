package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.*;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.Areas;
import studio.stancebook.geometry.Line;
import studio.stancebook.geometry.Point;

/**
 * Areas of the side view. Their first-order uncertainty takes each polyline as drawn in the right shape but a little too
 * high or low (outline, underbody), or with its edge a little too far out (side glass): common practice, no source.
 */
final class SideAreas {

    private SideAreas() {}

    static Formula.Result profileFill(Subject s) {
        Estimate box = s.get(OVERALL_LENGTH).times(s.get(OVERALL_HEIGHT));
        return Formula.Result.of(outlineArea(s.set()).over(box));
    }

    static Formula.Result glassAreaShare(Subject s) {
        List<Point> glass = s.set().points(Polyline.DAYLIGHT_OPENING);
        Estimate glassArea = Estimate.constant(Areas.of(glass))
                .plus(Estimate.of(Variable.GLASS_EDGE, 0).times(perimeter(glass)));
        Estimate sideArea = areaAboveRocker(s);
        return sideArea.value() > 0
                ? Formula.Result.of(glassArea.over(sideArea))
                : Formula.Result.none(NotMeasurable.Why.DEGENERATE);
    }

    private static Estimate outlineArea(DimensionSet set) {
        List<Point> outline = set.points(Polyline.OUTLINE);
        double span = span(outline);
        Estimate area = Estimate.constant(Areas.of(body(set)))
                .plus(Estimate.of(Variable.z(Polyline.OUTLINE), 0).times(span));
        return set.points(Polyline.UNDERBODY).isEmpty()
                ? area
                : area.minus(Estimate.of(Variable.z(Polyline.UNDERBODY), 0).times(span));
    }

    private static Estimate areaAboveRocker(Subject s) {
        List<Point> outline = s.set().points(Polyline.OUTLINE);
        double span = span(outline);
        Estimate rocker = s.get(ROCKER_AT_MID_WHEELBASE);
        Estimate offRecorded = rocker.minus(Estimate.constant(rocker.value()));
        return Estimate.constant(Areas.above(closedOnGround(outline), rockerLine(s, rocker.value())))
                .plus(Estimate.of(Variable.z(Polyline.OUTLINE), 0).times(span))
                .minus(offRecorded.times(span));
    }

    private static Line rockerLine(Subject s, double height) {
        if (s.drawn(Landmark.ROCKER_FRONT, Landmark.ROCKER_REAR)) {
            return new Line(
                    s.set().landmark(Landmark.ROCKER_FRONT).orElseThrow(),
                    s.set().landmark(Landmark.ROCKER_REAR).orElseThrow());
        }
        return new Line(new Point(0, height), new Point(1, height));
    }

    /** The whole side of the body: the outline closed along the underbody where there is one, else along the ground. */
    private static List<Point> body(DimensionSet set) {
        List<Point> outline = set.points(Polyline.OUTLINE);
        List<Point> underbody = new ArrayList<>(set.points(Polyline.UNDERBODY));
        if (underbody.isEmpty() || closed(outline)) {
            return closedOnGround(outline);
        }
        boolean sameWay = (last(underbody).x() > underbody.get(0).x())
                == (last(outline).x() > outline.get(0).x());
        if (sameWay) {
            Collections.reverse(underbody);
        }
        List<Point> ring = new ArrayList<>(outline);
        ring.addAll(underbody);
        return ring;
    }

    private static List<Point> closedOnGround(List<Point> outline) {
        if (closed(outline)) {
            return outline;
        }
        List<Point> ring = new ArrayList<>(outline);
        ring.add(new Point(last(outline).x(), 0));
        ring.add(new Point(outline.get(0).x(), 0));
        return ring;
    }

    private static boolean closed(List<Point> line) {
        return line.get(0).equals(last(line));
    }

    private static Point last(List<Point> line) {
        return line.get(line.size() - 1);
    }

    private static double span(List<Point> line) {
        double least = line.stream().mapToDouble(Point::x).min().orElse(0);
        return line.stream().mapToDouble(Point::x).max().orElse(0) - least;
    }

    private static double perimeter(List<Point> ring) {
        double sum = 0;
        Point before = last(ring);
        for (Point point : ring) {
            sum += Math.hypot(point.x() - before.x(), point.z() - before.z());
            before = point;
        }
        return sum;
    }
}
