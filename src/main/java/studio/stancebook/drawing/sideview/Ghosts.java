package studio.stancebook.drawing.sideview;

import java.util.List;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;

/** The silhouettes of others behind a drawing, laid over at one point, in mm or scaled to the same wheel. */
final class Ghosts {

    private final Vehicle vehicle;
    private final SideViewOptions options;
    private final DrawingBuilder drawing;
    private final Labels labels;

    Ghosts(Vehicle vehicle, SideViewOptions options, DrawingBuilder drawing, Labels labels) {
        this.vehicle = vehicle;
        this.options = options;
        this.drawing = drawing;
        this.labels = labels;
    }

    void draw(boolean named) {
        for (Ghost ghost : options.ghosts()) {
            draw(ghost.name(), Vehicle.of(ghost.dimensions()), named);
        }
    }

    private void draw(String name, Vehicle other, boolean named) {
        Placement placement = placement(other);
        PathBuilder path = new PathBuilder();
        new Silhouette(other, false, placement).pieces().forEach(piece -> path.append(piece.path()));
        drawing.stroke(LayerId.GHOSTS, "ghost", path);
        if (named && !path.empty()) {
            labels.ghost(name, placement.of(end(other)));
        }
    }

    private Placement placement(Vehicle other) {
        Double own = vehicle.wheelDiameter();
        Double its = other.wheelDiameter();
        double factor = options.inWheels() && own != null && its != null ? own / its : 1;
        Alignment alignment = options.alignment();
        return new Placement(factor, alignment.xOf(vehicle) - factor * alignment.xOf(other));
    }

    /** Near the rear end of its line, in its upper half. */
    static Point end(Vehicle other) {
        double height = 0.5 * other.topEnd();
        List<Point> outline = other.points(Polyline.OUTLINE);
        return outline.stream()
                .filter(point -> point.x() > other.wheelbase() && point.z() > height)
                .reduce((first, second) -> second)
                .or(() -> other.landmark(Landmark.TAIL_EDGE))
                .or(() -> other.landmark(Landmark.BACKLIGHT_BASE))
                .orElse(new Point(other.rearEnd(), height));
    }
}
