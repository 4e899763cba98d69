package studio.stancebook.classes.layout;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.measure.Measure;

/** A side view without some of its values. The wheelbase cannot go: what depends on it goes instead. */
final class WithoutValues {

    private static final String WHEELBASE = Dimension.WHEELBASE.key();

    private WithoutValues() {}

    static DimensionSet of(DimensionSet set, Set<String> apart) {
        if (apart.isEmpty()) {
            return set;
        }
        DimensionSetBuilder builder = set.toBuilder();
        apart.stream().filter(key -> !key.equals(WHEELBASE)).forEach(builder::without);
        return builder.build();
    }

    /** The places of measures that are set aside themselves, or depend on a wheelbase that is. */
    static IntStream measuresUpset(List<Measure> measures, DimensionSet set, Set<String> apart) {
        Dependence dependence = new Dependence(set);
        boolean wheelbase = apart.contains(WHEELBASE);
        return IntStream.range(0, measures.size()).filter(place -> {
            Measure measure = measures.get(place);
            return apart.contains(measure.key()) || (wheelbase && dependence.dependsOnAny(measure, List.of(WHEELBASE)));
        });
    }
}
