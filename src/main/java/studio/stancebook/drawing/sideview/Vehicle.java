package studio.stancebook.drawing.sideview;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.Point;

/** A dimension set made ready to draw: in mm, an unscaled sketch blown up to a wheelbase of 2,800 mm. */
final class Vehicle {

    /** The wheelbase that an unscaled sketch is drawn with, mm. */
    static final double SKETCH_WHEELBASE_MM = 2800;

    private final DimensionSet set;
    private final DimensionSet recorded;
    private final Readings readings;

    private Vehicle(DimensionSet recorded, DimensionSet drawn) {
        this.recorded = recorded;
        this.set = drawn;
        this.readings = new Readings(drawn);
    }

    static Vehicle of(DimensionSet set) {
        return new Vehicle(set, set.scale() == Scale.UNSCALED ? blownUp(set) : set);
    }

    private static DimensionSet blownUp(DimensionSet set) {
        double factor = SKETCH_WHEELBASE_MM / set.scalar(Dimension.WHEELBASE).orElseThrow();
        DimensionSetBuilder builder = DimensionSet.builder().scale(Scale.UNSCALED);
        set.scalars().forEach((d, value) -> builder.set(d, d.unit() == Unit.MM ? value * factor : value));
        set.landmarks().forEach((l, point) -> builder.set(l, point.x() * factor, point.z() * factor));
        set.polylines().forEach((p, points) -> builder.set(p, scaled(points, factor)));
        for (Axle axle : Axle.values()) {
            set.tyreDiameter(axle).ifPresent(d -> builder.set(axle.tyreDiameter(), d * factor));
            set.rimDiameter(axle).ifPresent(d -> builder.set(axle.rimDiameter(), d * factor));
        }
        return builder.build();
    }

    private static List<Point> scaled(List<Point> points, double factor) {
        return points.stream()
                .map(point -> new Point(point.x() * factor, point.z() * factor))
                .toList();
    }

    boolean unscaled() {
        return recorded.scale() == Scale.UNSCALED;
    }

    /** As recorded, for figures. */
    DimensionSet recorded() {
        return recorded;
    }

    double wheelbase() {
        return readings.get(Reading.WHEELBASE).value();
    }

    /** A length or height in drawing mm; null when nothing recorded gives it. */
    @Nullable
    Double find(Reading reading) {
        return readings.find(reading).map(Estimate::value).orElse(null);
    }

    Optional<Point> landmark(Landmark landmark) {
        return set.landmark(landmark);
    }

    OptionalDouble scalar(Dimension dimension) {
        return set.scalar(dimension);
    }

    List<Point> points(Polyline polyline) {
        return set.points(polyline);
    }

    Optional<DrawnTyre> tyre(Axle axle) {
        OptionalDouble diameter = set.tyreDiameter(axle);
        if (diameter.isEmpty()) {
            return Optional.empty();
        }
        double radius = diameter.getAsDouble() / 2;
        double height = Math.min(set.scalar(axle.loadedRadius()).orElse(radius), radius);
        OptionalDouble rim = set.rimDiameter(axle);
        Double rimRadius = rim.isPresent() ? Math.min(rim.getAsDouble() / 2, radius * 0.98) : null;
        return Optional.of(new DrawnTyre(axle == Axle.FRONT ? 0 : wheelbase(), height, radius, rimRadius));
    }

    /** The reference diameter; null unless both tyres are known. */
    @Nullable
    Double wheelDiameter() {
        return find(Reading.WHEEL_DIAMETER);
    }

    /** The size that things not recorded are drawn to: the known tyre, else a quarter of the wheelbase. */
    double nominalDiameter() {
        return tyre(Axle.FRONT)
                .or(() -> tyre(Axle.REAR))
                .map(tyre -> 2 * tyre.radius())
                .orElse(wheelbase() / 4);
    }

    /** Where the drawing begins: the nose where known, else the front tyre or further out what is recorded. */
    double frontEnd() {
        Double overhang = find(Reading.FRONT_OVERHANG);
        return overhang != null ? -overhang : Math.min(-nominalDiameter() / 2, leastX());
    }

    /** Where the drawing ends. */
    double rearEnd() {
        Double overhang = find(Reading.REAR_OVERHANG);
        double end = overhang != null ? overhang : Math.max(nominalDiameter() / 2, greatestX() - wheelbase());
        return wheelbase() + end;
    }

    private double leastX() {
        return set.polylines().values().stream()
                .flatMap(List::stream)
                .mapToDouble(Point::x)
                .min()
                .orElse(0);
    }

    private double greatestX() {
        return set.polylines().values().stream()
                .flatMap(List::stream)
                .mapToDouble(Point::x)
                .max()
                .orElse(0);
    }

    /** The highest thing drawn. */
    double topEnd() {
        double top = 2 * nominalDiameter();
        Double height = find(Reading.OVERALL_HEIGHT);
        top = Math.max(top, height == null ? 0 : height);
        for (Point point : points(Polyline.OUTLINE)) {
            top = Math.max(top, point.z());
        }
        for (Landmark landmark : Landmark.values()) {
            top = Math.max(top, landmark(landmark).map(Point::z).orElse(0.0));
        }
        return top;
    }
}
