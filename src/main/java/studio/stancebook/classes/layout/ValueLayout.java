package studio.stancebook.classes.layout;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;

/** Which place each measure has in the arrays that are kept with a package, for one list of measures. */
public final class ValueLayout implements ClassLayout {

    private final List<Measure> measures;
    private final List<String> keys;
    private final Map<String, Integer> places = new HashMap<>();
    private final String fingerprint;

    private ValueLayout(MeasureRegistry registry) {
        measures = registry.all();
        keys = measures.stream().map(Measure::key).toList();
        measures.forEach(measure -> places.put(measure.key(), places.size()));
        fingerprint = DimensionText.sha256(Probe.trace(registry));
    }

    /** The layout of a list of measures. */
    public static ValueLayout of(MeasureRegistry registry) {
        return new ValueLayout(registry);
    }

    /**
     * The same for lists of the same measures that compute the same; another as soon as a measure comes, goes, changes
     * its place or gives another number for one of the sample side views.
     */
    @Override
    public String fingerprint() {
        return fingerprint;
    }

    @Override
    public List<String> keys() {
        return keys;
    }

    @Override
    public String columns() {
        return "COALESCE(p.class_measures, p.measures) AS class_values,"
                + " CASE WHEN p.measure_layout = :layout THEN NULL ELSE p.dimensions END AS text_one,"
                + " p.values_set_aside AS text_two";
    }

    /** As they are kept, or computed from the dimensions where they were computed by another list of measures. */
    @Override
    public double[] read(ResultSet row, Origin origin) throws SQLException {
        @Nullable String measuredOtherwise = row.getString("text_one");
        return measuredOtherwise == null
                ? NullableNumbers.read(row, "class_values")
                : classMeasuresOf(
                        DimensionText.read(measuredOtherwise, origin), ValuesApart.keys(row.getString("text_two")));
    }

    @Override
    public OptionalInt place(String measure) {
        Integer place = places.get(measure);
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
    }

    /** Every measure of a side view; NaN where it has no value. */
    public double[] measuresOf(DimensionSet set) {
        Subject subject = new Subject(set);
        return measures.stream()
                .mapToDouble(measure -> number(measure.of(subject)))
                .toArray();
    }

    /**
     * What counts in the class when single values are set aside: a measure that is set aside counts as missing, a
     * dimension that is set aside as not recorded.
     */
    public double[] classMeasuresOf(DimensionSet set, Set<String> apart) {
        double[] values = measuresOf(WithoutValues.of(set, apart));
        WithoutValues.measuresUpset(measures, set, apart).forEach(place -> values[place] = Double.NaN);
        return values;
    }

    private static double number(MeasureValue value) {
        return value instanceof Measured measured ? measured.value() : Double.NaN;
    }

    /**
     * Every scalar in the order of {@link Dimension}; NaN where there is none, where it is set aside, or where a sketch
     * has no scale.
     */
    public static double[] scalarsOf(DimensionSet all, Set<String> apart) {
        DimensionSet set = WithoutValues.of(all, apart);
        double[] values = new double[Dimension.values().length];
        Arrays.fill(values, Double.NaN);
        for (Axle axle : Axle.values()) {
            set.tyreDiameter(axle).ifPresent(value -> values[axle.tyreDiameter().ordinal()] = value);
            set.rimDiameter(axle).ifPresent(value -> values[axle.rimDiameter().ordinal()] = value);
        }
        set.scalars().forEach((dimension, value) -> values[dimension.ordinal()] = value);
        if (set.scale() == Scale.UNSCALED) {
            Arrays.stream(Dimension.values())
                    .filter(dimension -> dimension.unit() == Unit.MM)
                    .forEach(dimension -> values[dimension.ordinal()] = Double.NaN);
        }
        if (apart.contains(Dimension.WHEELBASE.key())) {
            values[Dimension.WHEELBASE.ordinal()] = Double.NaN;
        }
        return values;
    }
}
