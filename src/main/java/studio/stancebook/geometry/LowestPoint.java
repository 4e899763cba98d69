package studio.stancebook.geometry;

import java.util.List;
import java.util.Optional;

/** Finds the lowest point of a polyline between two uprights, both included. */
final class LowestPoint {

    private final double fromX;
    private final double toX;

    private double lowestZ = Double.POSITIVE_INFINITY;
    private double lowestX;

    LowestPoint(double fromX, double toX) {
        this.fromX = fromX;
        this.toX = toX;
    }

    /** The foremost in the polyline of the lowest points; empty when no part of the polyline lies between the uprights. */
    Optional<Point> of(List<Point> polyline) {
        double beforeX = Double.NaN;
        double beforeZ = Double.NaN;
        for (Point point : polyline) {
            crossing(fromX, beforeX, beforeZ, point);
            crossing(toX, beforeX, beforeZ, point);
            if (fromX <= point.x() && point.x() <= toX) {
                offer(point.x(), point.z());
            }
            beforeX = point.x();
            beforeZ = point.z();
        }
        return lowestZ == Double.POSITIVE_INFINITY ? Optional.empty() : Optional.of(new Point(lowestX, lowestZ));
    }

    private void crossing(double upright, double beforeX, double beforeZ, Point point) {
        if (beforeX < upright && upright < point.x() || point.x() < upright && upright < beforeX) {
            offer(upright, beforeZ + (upright - beforeX) * (point.z() - beforeZ) / (point.x() - beforeX));
        }
    }

    private void offer(double x, double z) {
        if (z < lowestZ) {
            lowestZ = z;
            lowestX = x;
        }
    }
}
