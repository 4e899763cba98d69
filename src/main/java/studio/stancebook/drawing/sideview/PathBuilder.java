package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.geometry.Point;
import studio.stancebook.paper.Path;
import studio.stancebook.paper.Step;

/** Builds a path, whose y is downwards, from points in mm with z upwards. */
final class PathBuilder {

    private final List<Step> steps = new ArrayList<>();
    private final Placement placement;
    private Point last = new Point(0, 0);

    PathBuilder() {
        this(Placement.AS_RECORDED);
    }

    /** Puts every point where {@code placement} says. */
    PathBuilder(Placement placement) {
        this.placement = placement;
    }

    PathBuilder moveTo(Point point) {
        Point to = placed(point);
        steps.add(new Step.MoveTo(to.x(), -to.z()));
        return this;
    }

    PathBuilder moveTo(double x, double z) {
        return moveTo(new Point(x, z));
    }

    PathBuilder lineTo(Point point) {
        Point to = placed(point);
        steps.add(new Step.LineTo(to.x(), -to.z()));
        return this;
    }

    PathBuilder lineTo(double x, double z) {
        return lineTo(new Point(x, z));
    }

    /** A line straight up or down to height {@code z}. */
    PathBuilder upTo(double z) {
        return lineTo(last.x(), z);
    }

    /** A level line to {@code x}. */
    PathBuilder acrossTo(double x) {
        return lineTo(x, last.z());
    }

    PathBuilder curveTo(Point first, Point second, Point end) {
        Point one = placed(first);
        Point two = placed(second);
        Point to = placed(end);
        steps.add(new Step.CurveTo(one.x(), -one.z(), two.x(), -two.z(), to.x(), -to.z()));
        return this;
    }

    /** An arc of a circle, clockwise as seen on the sheet or against it. */
    PathBuilder arcTo(double radius, boolean large, boolean clockwise, Point end) {
        Point to = placed(end);
        steps.add(new Step.ArcTo(radius * placement.factor(), large, clockwise, to.x(), -to.z()));
        return this;
    }

    /** Closes the line; nothing where there is none. */
    PathBuilder close() {
        if (!empty()) {
            steps.add(new Step.Close());
        }
        return this;
    }

    PathBuilder append(PathBuilder other) {
        steps.addAll(other.steps);
        last = other.last;
        return this;
    }

    boolean empty() {
        return steps.isEmpty();
    }

    Path path() {
        return new Path(steps);
    }

    private Point placed(Point point) {
        last = point;
        return placement.of(point);
    }
}
