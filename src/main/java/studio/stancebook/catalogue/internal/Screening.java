package studio.stancebook.catalogue.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.ClassSnapshot;
import studio.stancebook.catalogue.ClassSnapshots;
import studio.stancebook.catalogue.QueryCause;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Unit;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.ModifiedZ;

/**
 * Finds values that are far from the rest of their class: modified z-score above 3.5 (Iglewicz and Hoaglin). A measure is
 * not asked about when a dimension that it depends on is asked about already.
 */
@Component
class Screening {

    private final ClassSnapshots snapshots;
    private final ScalarReader scalars;
    private final StoredPackages packages;
    private final StudioMeasures measures;

    Screening(ClassSnapshots snapshots, ScalarReader scalars, StoredPackages packages, StudioMeasures measures) {
        this.snapshots = snapshots;
        this.scalars = scalars;
        this.packages = packages;
        this.measures = measures;
    }

    /** For each of these packages, as far as there are any, the values that a person should look at. */
    Map<Long, List<RaisedQuery>> of(List<Long> ids, Collection<String> segments) {
        Set<Long> wanted = new HashSet<>(ids);
        Map<Long, List<RaisedQuery>> raised = new HashMap<>();
        for (String segment : segments) {
            dimensions(segment, wanted, raised);
            measures(snapshots.of(segment), wanted, raised);
        }
        return raised;
    }

    private void dimensions(String segment, Set<Long> wanted, Map<Long, List<RaisedQuery>> raised) {
        ScalarReader.Scalars read = scalars.of(segment, wanted);
        Arrays.stream(Dimension.values()).forEach(dimension -> {
            ModifiedZ screen = ModifiedZ.by(read.column(dimension));
            read.wanted().forEach((id, values) -> {
                double value = values[dimension.ordinal()];
                if (!Double.isNaN(value) && screen.screen(value).query()) {
                    add(raised, id, dimension.key(), sentence(dimension, screen.screen(value), read));
                }
            });
        });
    }

    private void measures(ClassSnapshot snapshot, Set<Long> wanted, Map<Long, List<RaisedQuery>> raised) {
        List<String> keys = snapshot.measures();
        List<ModifiedZ> screens =
                keys.stream().map(snapshot::column).map(ModifiedZ::by).toList();
        snapshot.forEachRow((block, row) -> {
            if (wanted.contains(block.id(row))) {
                List<Integer> far = far(block, row, screens);
                unexplained(block.id(row), far, keys, raised).forEach((place, measure) -> {
                    ModifiedZ.Screening screening = screens.get(place).screen(block.value(row, place));
                    add(raised, block.id(row), measure.key(), sentence(measure, screening, snapshot));
                });
            }
        });
    }

    private static List<Integer> far(RowBlock block, int row, List<ModifiedZ> screens) {
        List<Integer> far = new ArrayList<>();
        for (int place = 0; place < screens.size(); place++) {
            double value = block.value(row, place);
            if (!Double.isNaN(value) && screens.get(place).screen(value).query()) {
                far.add(place);
            }
        }
        return far;
    }

    /** Those of the measures, by their places, that depend on no dimension that is asked about already. */
    private Map<Integer, Measure> unexplained(
            long id, List<Integer> far, List<String> keys, Map<Long, List<RaisedQuery>> raised) {
        List<String> asked = raised.getOrDefault(id, List.of()).stream()
                .map(query -> String.valueOf(query.valueKey()))
                .toList();
        Map<Integer, Measure> left = new LinkedHashMap<>();
        far.forEach(place -> measures.current().find(keys.get(place)).ifPresent(m -> left.put(place, m)));
        if (!left.isEmpty() && !asked.isEmpty()) {
            Dependence dependence =
                    new Dependence(packages.find(id).orElseThrow().dimensions());
            left.values().removeIf(measure -> dependence.dependsOnAny(measure, asked));
        }
        return left;
    }

    private static void add(Map<Long, List<RaisedQuery>> raised, long id, String key, String question) {
        raised.computeIfAbsent(id, none -> new ArrayList<>())
                .add(new RaisedQuery(QueryCause.FAR_FROM_CLASS, key, question));
    }

    private static String sentence(Dimension dimension, ModifiedZ.Screening screening, ScalarReader.Scalars read) {
        String unit =
                dimension.unit() == Unit.DEG ? "°" : " " + dimension.unit().symbol();
        return dimension.label() + ", " + NumberText.plain(screening.value(), 1) + unit.stripTrailing()
                + far(screening, NumberText.plain(read.column(dimension).median(), 1) + unit.stripTrailing());
    }

    private static String sentence(Measure measure, ModifiedZ.Screening screening, ClassSnapshot snapshot) {
        String unit = measure.unit().symbol();
        double median = snapshot.column(measure.key()).median();
        return measure.name() + ", " + NumberText.fixed(screening.value(), measure.decimals()) + unit
                + far(screening, NumberText.fixed(median, measure.decimals()) + unit);
    }

    private static String far(ModifiedZ.Screening screening, String median) {
        String score = screening.score().isEmpty()
                ? ""
                : " (modified z-score " + NumberText.signed(screening.score().getAsDouble(), 1) + ")";
        return ", is far from the rest of its class, whose median is " + median + score + ": a typing error?";
    }
}
