package studio.stancebook.catalogue.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.IssueCause;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.classes.RowBlock;
import studio.stancebook.classes.ScalarClasses;
import studio.stancebook.classes.layout.Dependence;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Unit;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.ModifiedZ;
import studio.stancebook.tyre.CommonSizes;

/**
 * Finds values that are far from the rest of their class: modified z-score above 3.5 (Iglewicz and Hoaglin). A measure is
 * not asked about when a dimension that it depends on is asked about already, nor when it follows from common tyre sizes alone.
 */
@Component
class Screening {

    private final ClassSnapshots snapshots;
    private final ScalarClasses scalars;
    private final StoredPackages packages;
    private final StudioMeasures measures;

    Screening(ClassSnapshots snapshots, ScalarClasses scalars, StoredPackages packages, StudioMeasures measures) {
        this.snapshots = snapshots;
        this.scalars = scalars;
        this.packages = packages;
        this.measures = measures;
    }

    /** Says that packages are going to be added to a segment, before its change begins. */
    void expectAdditions(String segment) {
        scalars.expectAdditions(segment);
        snapshots.expectAdditions(segment);
    }

    /** Tells of packages that were added. */
    void added(List<StoredPackage> added) {
        added.stream().collect(Collectors.groupingBy(one -> one.segment().id())).forEach((segmentId, here) -> {
            scalars.added(segmentId, here.stream().map(StoredPackage::scalarRow).toList());
            here.stream()
                    .collect(Collectors.groupingBy(StoredPackage::measureLayout))
                    .forEach((layout, alike) -> snapshots.added(
                            segmentId,
                            layout,
                            alike.stream().map(StoredPackage::measureRow).toList()));
        });
    }

    /** For each of these packages of a segment the values that a person should look at. */
    Map<Long, List<RaisedIssue>> of(List<Long> ids, String segment) {
        Map<Long, List<RaisedIssue>> raised = new HashMap<>();
        dimensions(scalars.of(segment), ids, raised);
        Map<Long, Set<String>> withdrawn = withdrawCommonTyres(raised);
        measures(snapshots.of(segment), ids, raised, withdrawn);
        return raised;
    }

    /**
     * Takes back what is asked about a diameter that follows from a common tyre size: the size was chosen, however few of the
     * class have it.
     *
     * @return the diameters that are far and that nobody is asked about, by package
     */
    private Map<Long, Set<String>> withdrawCommonTyres(Map<Long, List<RaisedIssue>> raised) {
        List<Long> asked = raised.entrySet().stream()
                .filter(entry -> entry.getValue().stream().anyMatch(one -> isTyre(one.valueKey())))
                .map(Map.Entry::getKey)
                .toList();
        Map<Long, Set<String>> withdrawn = new HashMap<>();
        sets(asked).forEach((id, set) -> {
            Set<String> chosen = chosenBySize(set);
            List<RaisedIssue> all = raised.getOrDefault(id, new ArrayList<>());
            all.stream()
                    .map(RaisedIssue::valueKey)
                    .filter(key -> key != null && chosen.contains(key))
                    .forEach(key -> withdrawn
                            .computeIfAbsent(id, none -> new HashSet<>())
                            .add(key));
            all.removeIf(one -> one.valueKey() != null && chosen.contains(one.valueKey()));
            if (all.isEmpty()) {
                raised.remove(id);
            }
        });
        return withdrawn;
    }

    private Map<Long, DimensionSet> sets(List<Long> ids) {
        Map<Long, DimensionSet> sets = new HashMap<>();
        Chunks.of(ids)
                .forEach(
                        chunk -> packages.recorded(chunk).forEach(recorded -> sets.put(recorded.id(), recorded.set())));
        return sets;
    }

    private static boolean isTyre(@Nullable String key) {
        return Arrays.stream(Axle.values())
                .anyMatch(axle -> axle.tyreDiameter().key().equals(key)
                        || axle.rimDiameter().key().equals(key));
    }

    private static Set<String> chosenBySize(DimensionSet set) {
        Set<String> keys = new HashSet<>();
        for (Axle axle : Axle.values()) {
            if (set.tyre(axle).filter(CommonSizes::contains).isPresent()) {
                Stream.of(axle.tyreDiameter(), axle.rimDiameter())
                        .filter(diameter -> set.scalar(diameter).isEmpty())
                        .forEach(diameter -> keys.add(diameter.key()));
            }
        }
        return keys;
    }

    private static void dimensions(ClassSnapshot scalars, List<Long> wanted, Map<Long, List<RaisedIssue>> raised) {
        Dimension[] dimensions = Dimension.values();
        List<ModifiedZ> screens = screens(scalars);
        scalars.forEachRow(wanted, (block, row) -> {
            for (int place = 0; place < dimensions.length; place++) {
                double value = block.value(row, place);
                if (!Double.isNaN(value)) {
                    ModifiedZ.ScreenedValue screening = screens.get(place).screen(value);
                    if (screening.query()) {
                        Dimension dimension = dimensions[place];
                        double median = scalars.column(dimension.key()).median();
                        add(raised, block.id(row), dimension.key(), sentence(dimension, screening, median));
                    }
                }
            }
        });
    }

    private static List<ModifiedZ> screens(ClassSnapshot snapshot) {
        return snapshot.measures().stream()
                .map(snapshot::column)
                .map(ModifiedZ::by)
                .toList();
    }

    private void measures(
            ClassSnapshot snapshot,
            List<Long> wanted,
            Map<Long, List<RaisedIssue>> raised,
            Map<Long, Set<String>> withdrawn) {
        for (List<Far> part : Chunks.of(far(snapshot, wanted))) {
            Map<Long, DimensionSet> sets = sets(part.stream().map(Far::id).toList());
            for (Far one : part) {
                DimensionSet set = Objects.requireNonNull(sets.get(one.id()));
                Set<String> told = new HashSet<>(withdrawn.getOrDefault(one.id(), Set.of()));
                raised.getOrDefault(one.id(), List.of()).forEach(query -> told.add(String.valueOf(query.valueKey())));
                Set<String> chosen = chosenBySize(set);
                Dependence dependence = new Dependence(set);
                one.values().entrySet().stream()
                        .filter(entry -> !dependence.dependsOnAny(entry.getKey(), told)
                                && !dependence.dependsOnlyOn(entry.getKey(), chosen))
                        .forEach(entry -> add(
                                raised,
                                one.id(),
                                entry.getKey().key(),
                                sentence(entry.getKey(), entry.getValue(), snapshot)));
            }
        }
    }

    /** The measures of a package that are far from the class. */
    private record Far(long id, Map<Measure, ModifiedZ.ScreenedValue> values) {}

    private List<Far> far(ClassSnapshot snapshot, List<Long> wanted) {
        List<ModifiedZ> screens = screens(snapshot);
        List<Optional<Measure>> inOrder =
                snapshot.measures().stream().map(measures.current()::find).toList();
        List<Far> far = new ArrayList<>();
        snapshot.forEachRow(wanted, (block, row) -> {
            Map<Measure, ModifiedZ.ScreenedValue> values = far(block, row, screens, inOrder);
            if (!values.isEmpty()) {
                far.add(new Far(block.id(row), values));
            }
        });
        return far;
    }

    private static Map<Measure, ModifiedZ.ScreenedValue> far(
            RowBlock block, int row, List<ModifiedZ> screens, List<Optional<Measure>> inOrder) {
        Map<Measure, ModifiedZ.ScreenedValue> far = new LinkedHashMap<>();
        for (int place = 0; place < screens.size(); place++) {
            double value = block.value(row, place);
            if (!Double.isNaN(value)) {
                ModifiedZ.ScreenedValue screening = screens.get(place).screen(value);
                if (screening.query()) {
                    inOrder.get(place).ifPresent(measure -> far.put(measure, screening));
                }
            }
        }
        return far;
    }

    private static void add(Map<Long, List<RaisedIssue>> raised, long id, String key, String question) {
        raised.computeIfAbsent(id, none -> new ArrayList<>())
                .add(new RaisedIssue(IssueCause.FAR_FROM_CLASS, key, question));
    }

    private static String sentence(Dimension dimension, ModifiedZ.ScreenedValue screening, double median) {
        String unit =
                dimension.unit() == Unit.DEG ? "°" : " " + dimension.unit().symbol();
        return dimension.label() + ", " + NumberText.plain(screening.value(), 1) + unit.stripTrailing()
                + far(screening, NumberText.plain(median, 1) + unit.stripTrailing());
    }

    private static String sentence(Measure measure, ModifiedZ.ScreenedValue screening, ClassSnapshot snapshot) {
        String unit = measure.unit().symbol();
        double median = snapshot.column(measure.key()).median();
        return measure.name() + ", " + NumberText.fixed(screening.value(), measure.decimals()) + unit
                + far(screening, NumberText.fixed(median, measure.decimals()) + unit);
    }

    private static String far(ModifiedZ.ScreenedValue screening, String median) {
        String score = screening.score().isEmpty()
                ? ""
                : " (modified z-score " + NumberText.signed(screening.score().getAsDouble(), 1) + ")";
        return ", is far from the rest of its class, whose median is " + median + score + ": a typing error?";
    }
}
