package studio.stancebook.dimension;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/**
 * All that is recorded of one vehicle package or one revision of a proposal. Only the wheelbase must be there; a value
 * that is missing is missing, never zero. Lengths in mm (in units of the sketch when {@link Scale#UNSCALED}), angles in
 * degrees, axes of ISO 4130 with x = 0 at the front wheel centre.
 *
 * @param scale whether lengths are millimetres
 * @param edition the meaning of the track codes
 * @param origin where values come from that have no origin of their own
 * @param tyres designations by axle
 * @param scalars recorded scalars
 * @param landmarks recorded points
 * @param polylines recorded lines
 * @param uncertainties standard uncertainties by the JSON name of the value, where not the default of its origin
 * @param origins origins by the JSON name of the value, where not {@code origin}
 * @param recorded who set each value and when, by its JSON name, where known
 */
public record DimensionSet(
        Scale scale,
        Edition edition,
        Origin origin,
        Map<Axle, TyreDesignation> tyres,
        Map<Dimension, Double> scalars,
        Map<Landmark, Point> landmarks,
        Map<Polyline, List<Point>> polylines,
        Map<String, Double> uncertainties,
        Map<String, Origin> origins,
        Map<String, Recorded> recorded) {

    /**
     * Standard uncertainty of an overall diameter taken from a designation, as a share of it: real tyres lie within 1.3 % of
     * the rule, taken as a rectangular distribution (JCGM 100, 4.3.7). Studio decision 0085.
     */
    public static final double DESIGNATION_UNCERTAINTY_SHARE = 0.013 / Math.sqrt(3);

    /**
     * Standard uncertainty of the deflection of a tyre whose loaded radius is not known: it lies anywhere from 0 to 5 % of
     * the free radius, and 0 is taken (JCGM 100, F.2.4.5). Studio decision 0086.
     */
    private static final double DEFLECTION_UNCERTAINTY = 0.05 / Math.sqrt(3);

    /** Standard uncertainty of a length of an unscaled sketch by its wheelbase: studio decision 0084. */
    private static final double SKETCH_UNCERTAINTY_BY_WHEELBASE = 0.005;

    /** @throws IllegalArgumentException if there is no wheelbase or a number is not finite */
    public DimensionSet {
        tyres = enumCopy(Axle.class, tyres);
        scalars = enumCopy(Dimension.class, scalars);
        landmarks = enumCopy(Landmark.class, landmarks);
        polylines = copyOfLines(polylines);
        uncertainties = Collections.unmodifiableMap(new TreeMap<>(uncertainties));
        origins = Collections.unmodifiableMap(new TreeMap<>(origins));
        recorded = Collections.unmodifiableMap(new TreeMap<>(recorded));
        if (!scalars.containsKey(Dimension.WHEELBASE)) {
            throw new IllegalArgumentException("A dimension set needs a wheelbase");
        }
        scalars.forEach(DimensionSet::requireFinite);
        uncertainties.forEach(DimensionSet::requireFinite);
    }

    private static void requireFinite(Object name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, got " + value);
        }
    }

    private static <K extends Enum<K>, V> Map<K, V> enumCopy(Class<K> type, Map<K, V> values) {
        Map<K, V> copy = new EnumMap<>(type);
        copy.putAll(values);
        return Collections.unmodifiableMap(copy);
    }

    private static Map<Polyline, List<Point>> copyOfLines(Map<Polyline, List<Point>> lines) {
        Map<Polyline, List<Point>> copy = new EnumMap<>(Polyline.class);
        lines.forEach((polyline, points) -> copy.put(polyline, List.copyOf(points)));
        return Collections.unmodifiableMap(copy);
    }

    /** A builder with nothing recorded yet: millimetres, older edition, origin from a drawing. */
    public static DimensionSetBuilder builder() {
        return new DimensionSetBuilder();
    }

    /** A builder with everything of this set. */
    public DimensionSetBuilder toBuilder() {
        return new DimensionSetBuilder(this);
    }

    public OptionalDouble scalar(Dimension dimension) {
        Double value = scalars.get(dimension);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    public Optional<TyreDesignation> tyre(Axle axle) {
        return Optional.ofNullable(tyres.get(axle));
    }

    public Optional<Point> landmark(Landmark landmark) {
        return Optional.ofNullable(landmarks.get(landmark));
    }

    /** The points of a polyline; empty when it is not recorded. */
    public List<Point> points(Polyline polyline) {
        return polylines.getOrDefault(polyline, List.of());
    }

    /** The overall diameter of an axle's tyres: by the rule from a designation, else as recorded. */
    public OptionalDouble tyreDiameter(Axle axle) {
        TyreDesignation designation = tyres.get(axle);
        return designation == null ? scalar(axle.tyreDiameter()) : OptionalDouble.of(designation.overallDiameterMm());
    }

    /** The rim diameter of an axle: from a designation, else as recorded. */
    public OptionalDouble rimDiameter(Axle axle) {
        TyreDesignation designation = tyres.get(axle);
        return designation == null ? scalar(axle.rimDiameter()) : OptionalDouble.of(designation.rimDiameterMm());
    }

    /** True when both axles carry one size, so that their diameters vary together. */
    public boolean sameTyresAllRound() {
        TyreDesignation front = tyres.get(Axle.FRONT);
        TyreDesignation rear = tyres.get(Axle.REAR);
        if (front != null || rear != null) {
            return front != null && rear != null && front.size().equals(rear.size());
        }
        Double diameter = scalars.get(Dimension.FRONT_TYRE_DIAMETER);
        return diameter != null && diameter.equals(scalars.get(Dimension.REAR_TYRE_DIAMETER));
    }

    /** The JSON names of all values recorded here, in the order of their kinds. */
    public Set<String> valueKeys() {
        Set<String> keys = new LinkedHashSet<>();
        tyres.keySet().forEach(axle -> keys.add(axle.tyreKey()));
        scalars.keySet().forEach(dimension -> keys.add(dimension.key()));
        landmarks.keySet().forEach(landmark -> keys.add(landmark.key()));
        polylines.keySet().forEach(polyline -> keys.add(polyline.key()));
        return keys;
    }

    /** What is recorded under a JSON name, for comparison; null when nothing is. */
    public @Nullable Object value(String key) {
        for (Axle axle : Axle.values()) {
            if (axle.tyreKey().equals(key)) {
                return tyres.get(axle);
            }
        }
        return Dimension.ofKey(key)
                .<Object>map(scalars::get)
                .or(() -> Landmark.ofKey(key).map(landmarks::get))
                .or(() -> Polyline.ofKey(key).map(polylines::get))
                .orElse(null);
    }

    /** Where the value of a JSON name comes from. */
    public Origin originOf(String key) {
        return origins.getOrDefault(key, origin);
    }

    /**
     * The standard uncertainty of a variable in its unit: as given, else 0.75 % of a diameter from a designation, else
     * 0.5 % of the wheelbase for a length of an unscaled sketch, else the default of its origin.
     */
    public double standardUncertainty(Variable variable) {
        if (variable == Variable.TYRE_DEFLECTION) {
            return DEFLECTION_UNCERTAINTY;
        }
        for (Axle axle : Axle.values()) {
            if (isDiameterOf(variable, axle) && tyres.containsKey(axle)) {
                return designationUncertainty(axle);
            }
        }
        String key = variable == Variable.TYRE_DIAMETER ? Dimension.FRONT_TYRE_DIAMETER.key() : variable.valueKey();
        return uncertaintyOf(key, variable.unit());
    }

    /** The standard uncertainty of the value of a JSON name as recorded, in its unit. */
    double uncertaintyOf(String key, Unit unit) {
        Double given = uncertainties.get(key);
        if (given != null) {
            return given;
        }
        return scale == Scale.UNSCALED && unit == Unit.MM
                ? SKETCH_UNCERTAINTY_BY_WHEELBASE * scalar(Dimension.WHEELBASE).orElseThrow()
                : originOf(key).defaultUncertainty(unit);
    }

    private static boolean isDiameterOf(Variable variable, Axle axle) {
        return variable == Variable.TYRE_DIAMETER || variable == Variable.of(axle.tyreDiameter());
    }

    double designationUncertainty(Axle axle) {
        Double given = uncertainties.get(axle.tyreKey());
        return given != null
                ? given
                : DESIGNATION_UNCERTAINTY_SHARE * tyreDiameter(axle).orElse(0);
    }

    /**
     * This set with one variable changed by {@code change} in its unit; a designation whose diameter changes becomes a
     * plain diameter and keeps its rim. Values not recorded here are left alone.
     */
    public DimensionSet moved(Variable variable, double change) {
        return toBuilder().move(variable, change).build();
    }

    /**
     * This set with each value that is new or differs from {@code before} given that mark; the others keep the
     * mark they had.
     */
    public DimensionSet markedSince(@Nullable DimensionSet before, Recorded now) {
        Map<String, Recorded> marks = new LinkedHashMap<>();
        for (String key : valueKeys()) {
            Object value = value(key);
            boolean kept = before != null && value != null && value.equals(before.value(key));
            Recorded then = kept && before != null ? before.recorded().get(key) : null;
            marks.put(key, then == null ? now : then);
        }
        return withMarks(marks);
    }

    /** This set with the names that people have now in its marks. */
    public DimensionSet withNames(Map<Long, String> names) {
        Map<String, Recorded> marks = new LinkedHashMap<>();
        recorded.forEach((key, mark) -> marks.put(key, mark.named(names)));
        return withMarks(marks);
    }

    private DimensionSet withMarks(Map<String, Recorded> marks) {
        return new DimensionSet(
                scale, edition, origin, tyres, scalars, landmarks, polylines, uncertainties, origins, marks);
    }
}
