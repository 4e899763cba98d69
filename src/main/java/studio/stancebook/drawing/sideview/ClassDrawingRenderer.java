package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.geometry.Point;

/** Draws a class: what is behind its silhouettes, the silhouettes, and the median over them. */
final class ClassDrawingRenderer {

    private static final int LONGEST_NAME = 40;
    private static final double WHEEL = ClassDrawing.WHEEL;

    private final List<Laid> laid = new ArrayList<>();
    private final @Nullable Laid median;
    private final List<ClassZone> zones;
    private final Extent extent;

    /** A vehicle to one tyre diameter. */
    private record Laid(long id, String name, Vehicle vehicle, Placement placement) {

        /** Empty where a tyre is not known. */
        static Optional<Laid> of(long id, Ghost ghost) {
            Vehicle vehicle = Vehicle.of(ghost.dimensions());
            Double d = vehicle.wheelDiameter();
            String name = Lettering.shortened(Lettering.writable(ghost.name()), LONGEST_NAME);
            return d == null ? Optional.empty() : Optional.of(new Laid(id, name, vehicle, new Placement(WHEEL / d, 0)));
        }

        PathBuilder silhouette() {
            PathBuilder path = new PathBuilder(placement);
            new Silhouette(vehicle, true, placement).pieces().forEach(piece -> path.append(piece.path()));
            return path;
        }

        double wheels(double mm) {
            return mm * placement.factor();
        }
    }

    ClassDrawingRenderer(List<ClassDrawing.Member> members, @Nullable Ghost typical, List<ClassZone> zones) {
        members.forEach(member -> Laid.of(member.id(), member.ghost())
                .filter(one -> !one.silhouette().empty())
                .ifPresent(laid::add));
        this.median = typical == null ? null : Laid.of(0, typical).orElse(null);
        this.zones = List.copyOf(zones);
        this.extent = extent();
    }

    ClassDrawing drawing() {
        double x = extent.left() + 0.5 * extent.em();
        double y = -extent.top() + 1.1 * extent.em();
        List<ClassDrawing.Line> lines = laid.stream()
                .map(one ->
                        new ClassDrawing.Line(one.id, one.name, one.silhouette().path(), x, y))
                .toList();
        return new ClassDrawing(behind(), lines, median == null ? null : over(median));
    }

    private List<Laid> all() {
        List<Laid> all = new ArrayList<>(laid);
        if (median != null) {
            all.add(median);
        }
        return all;
    }

    /** Everything with a margin; the lettering as on a narrow page, which a wider one sets smaller. */
    private Extent extent() {
        double left = -1.2 * WHEEL;
        double right = 5 * WHEEL;
        double top = 2.2 * WHEEL;
        for (Laid one : all()) {
            left = Math.min(left, one.wheels(one.vehicle.frontEnd()));
            right = Math.max(right, one.wheels(one.vehicle.rearEnd()));
            top = Math.max(top, one.wheels(one.vehicle.topEnd()));
        }
        double share = Format.NARROW.emShare();
        double em = (right - left) * share / (1 - 1.6 * share);
        return new Extent(left - 0.8 * em, right + 0.8 * em, -2.8 * em, top + 2.4 * em, em, right);
    }

    private Sheet behind() {
        DrawingBuilder drawing = new DrawingBuilder();
        Grid.ofWheels(WHEEL, extent, drawing);
        new ZoneRenderer(extent, drawing, medianWheelbase(), medianCowl()).draw(zones);
        drawing.line(LayerId.GROUND, "ground", new Point(extent.left(), 0), new Point(extent.right(), 0));
        return extent.sheet(drawing, Format.THUMBNAIL);
    }

    /** In units of the picture; null without a median. */
    private @Nullable Double medianWheelbase() {
        return median == null ? null : median.wheels(median.vehicle.wheelbase());
    }

    private @Nullable Point medianCowl() {
        return median == null
                ? null
                : median.vehicle
                        .landmark(Landmark.COWL)
                        .map(median.placement::of)
                        .orElse(null);
    }

    private Sheet over(Laid one) {
        DrawingBuilder drawing = new DrawingBuilder();
        DrawingBuilder placed = drawing.placed(one.placement, UnaryOperator.identity());
        Marking unmarked = new Marking(Set.of(), Set.of());
        Silhouette silhouette = new Silhouette(one.vehicle, false);
        List<Silhouette.Piece> pieces = silhouette.pieces();
        pieces.forEach(piece -> placed.stroke(LayerId.BODY, "tape", piece.path()));
        new LowerBody(one.vehicle, silhouette, placed, unmarked).draw(!pieces.isEmpty());
        new Wheels(one.vehicle, placed, unmarked).draw(false);
        return extent.sheet(drawing, Format.THUMBNAIL);
    }
}
