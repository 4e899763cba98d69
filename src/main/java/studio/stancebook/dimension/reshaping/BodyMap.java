package studio.stancebook.dimension.reshaping;

import java.util.List;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.geometry.Point;

/** All landmarks and lines of a set moved by a map along the vehicle and a map of heights. */
final class BodyMap {

    private BodyMap() {}

    static DimensionSet moved(DimensionSet set, Stretch along, Stretch up, Quantum quantum) {
        DimensionSetBuilder builder = set.toBuilder();
        set.landmarks().forEach((landmark, at) -> {
            Point to = of(at, along, up);
            if (!near(at, to)) {
                Point rounded = quantum.ofLandmark(to);
                builder.set(landmark, rounded.x(), rounded.z());
            }
        });
        set.polylines().forEach((polyline, points) -> builder.set(polyline, moved(points, along, up, quantum)));
        return builder.build();
    }

    static List<Point> moved(List<Point> line, Stretch along, Stretch up, Quantum quantum) {
        return line.stream()
                .map(at -> {
                    Point to = of(at, along, up);
                    return near(at, to) ? at : quantum.ofLine(to);
                })
                .toList();
    }

    /** What does not move keeps its decimals. */
    private static boolean near(Point from, Point to) {
        return Math.abs(from.x() - to.x()) < 1e-9 && Math.abs(from.z() - to.z()) < 1e-9;
    }

    private static Point of(Point at, Stretch along, Stretch up) {
        return new Point(along.of(at.x()), up.of(at.z()));
    }
}
