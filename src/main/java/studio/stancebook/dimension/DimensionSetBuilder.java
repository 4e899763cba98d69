package studio.stancebook.dimension;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/** Collects the values of a {@link DimensionSet}; a later value replaces an earlier one. */
public final class DimensionSetBuilder {

    private Scale scale = Scale.MILLIMETRES;
    private Edition edition = Edition.OLDER;
    private Origin origin = Origin.DRAWING;
    private final Map<Axle, TyreDesignation> tyres = new EnumMap<>(Axle.class);
    private final Map<Dimension, Double> scalars = new EnumMap<>(Dimension.class);
    private final Map<Landmark, Point> landmarks = new EnumMap<>(Landmark.class);
    private final Map<Polyline, List<Point>> polylines = new EnumMap<>(Polyline.class);
    private final Map<String, Double> uncertainties = new HashMap<>();
    private final Map<String, Origin> origins = new HashMap<>();
    private final Map<String, Recorded> recorded = new HashMap<>();

    DimensionSetBuilder() {}

    DimensionSetBuilder(DimensionSet set) {
        scale = set.scale();
        edition = set.edition();
        origin = set.origin();
        tyres.putAll(set.tyres());
        scalars.putAll(set.scalars());
        landmarks.putAll(set.landmarks());
        polylines.putAll(set.polylines());
        uncertainties.putAll(set.uncertainties());
        origins.putAll(set.origins());
        recorded.putAll(set.recorded());
    }

    public DimensionSetBuilder scale(Scale value) {
        scale = value;
        return this;
    }

    public DimensionSetBuilder edition(Edition value) {
        edition = value;
        return this;
    }

    /** The origin of values that get none of their own. */
    public DimensionSetBuilder origin(Origin value) {
        origin = value;
        return this;
    }

    public DimensionSetBuilder tyre(Axle axle, TyreDesignation designation) {
        tyres.put(axle, designation);
        return this;
    }

    /** The same size on both axles. */
    public DimensionSetBuilder tyres(TyreDesignation designation) {
        return tyre(Axle.FRONT, designation).tyre(Axle.REAR, designation);
    }

    public DimensionSetBuilder set(Dimension dimension, double value) {
        scalars.put(dimension, value);
        return this;
    }

    public DimensionSetBuilder set(Landmark landmark, double x, double z) {
        landmarks.put(landmark, new Point(x, z));
        return this;
    }

    public DimensionSetBuilder set(Polyline polyline, List<Point> points) {
        polylines.put(polyline, points);
        return this;
    }

    /** Forgets the value of a JSON name, with its uncertainty and origin. */
    public DimensionSetBuilder without(String key) {
        Dimension.ofKey(key).ifPresent(scalars::remove);
        Landmark.ofKey(key).ifPresent(landmarks::remove);
        Polyline.ofKey(key).ifPresent(polylines::remove);
        tyres.keySet().removeIf(axle -> axle.tyreKey().equals(key));
        uncertainties.remove(key);
        origins.remove(key);
        recorded.remove(key);
        return this;
    }

    /** The standard uncertainty of the value of a JSON name, in its unit. */
    public DimensionSetBuilder uncertainty(String key, double standardUncertainty) {
        uncertainties.put(key, standardUncertainty);
        return this;
    }

    /** The origin of the value of a JSON name. */
    public DimensionSetBuilder origin(String key, Origin value) {
        origins.put(key, value);
        return this;
    }

    DimensionSetBuilder recorded(String key, Recorded mark) {
        recorded.put(key, mark);
        return this;
    }

    DimensionSetBuilder move(Variable variable, double change) {
        if (variable == Variable.TYRE_DIAMETER) {
            return moveTyre(Axle.FRONT, change).moveTyre(Axle.REAR, change);
        }
        for (Axle axle : Axle.values()) {
            if (variable == Variable.of(axle.tyreDiameter())) {
                return moveTyre(axle, change);
            }
        }
        scalars.replaceAll((d, value) -> variable == Variable.of(d) ? value + change : value);
        landmarks.replaceAll((l, point) ->
                shifted(point, variable == Variable.x(l) ? change : 0, variable == Variable.z(l) ? change : 0));
        polylines.replaceAll((p, points) ->
                shifted(points, variable == Variable.x(p) ? change : 0, variable == Variable.z(p) ? change : 0));
        return this;
    }

    private DimensionSetBuilder moveTyre(Axle axle, double change) {
        TyreDesignation designation = tyres.remove(axle);
        if (designation != null) {
            scalars.put(axle.tyreDiameter(), designation.overallDiameterMm());
            scalars.put(axle.rimDiameter(), designation.rimDiameterMm());
        }
        scalars.computeIfPresent(axle.tyreDiameter(), (d, value) -> value + change);
        return this;
    }

    private static Point shifted(Point point, double byX, double byZ) {
        return byX == 0 && byZ == 0 ? point : new Point(point.x() + byX, point.z() + byZ);
    }

    private static List<Point> shifted(List<Point> points, double byX, double byZ) {
        return byX == 0 && byZ == 0
                ? points
                : points.stream().map(point -> shifted(point, byX, byZ)).toList();
    }

    /** @throws IllegalArgumentException if there is no wheelbase or a number is not finite */
    public DimensionSet build() {
        return new DimensionSet(
                scale, edition, origin, tyres, scalars, landmarks, polylines, uncertainties, origins, recorded);
    }
}
