package studio.stancebook.band.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.Tick;
import studio.stancebook.drawing.sideview.ClassDrawing;
import studio.stancebook.drawing.sideview.ClassZone;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.SortedColumn;

/**
 * The picture of a class and the table behind it.
 *
 * @param packages how many count in the class
 * @param step that many further is the next package drawn
 * @param measures names of the columns
 * @param median of the whole class, a value for each column
 * @param limits what the bands allow, for each column; null for none
 * @param rows of the packages that were read
 * @param undrawn names of those that cannot be drawn
 */
record ClassPicture(
        ClassDrawing drawing,
        int packages,
        int step,
        List<String> measures,
        List<String> median,
        List<@Nullable RangeText> limits,
        List<PackageRow> rows,
        List<String> undrawn) {

    /** A package with its values; empty where it has none. */
    record PackageRow(long id, String name, List<String> values) {}

    static int step(int packages) {
        return Math.max(1, (packages + ClassPictures.MOST_DRAWN - 1) / ClassPictures.MOST_DRAWN);
    }

    static ClassPicture of(
            ClassSnapshot snapshot,
            ClassDrawing drawing,
            List<ClassDrawing.Member> members,
            List<ClassZone> zones,
            MeasureRegistry registry) {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(snapshot, registry.get("wheelbase-in-wheels"), null));
        for (ClassZone.Kind kind : ClassZone.Kind.values()) {
            ClassZone zone =
                    zones.stream().filter(one -> one.kind() == kind).findFirst().orElse(null);
            columns.add(new Column(snapshot, registry.get(kind.measure()), zone));
        }
        Set<Long> drawn = new HashSet<>();
        drawing.lines().forEach(line -> drawn.add(line.id()));
        return new ClassPicture(
                drawing,
                snapshot.packages(),
                step(snapshot.packages()),
                columns.stream().map(Column::name).toList(),
                columns.stream().map(Column::median).toList(),
                limits(columns),
                members.stream().map(member -> row(member, columns)).toList(),
                members.stream()
                        .filter(member -> !drawn.contains(member.id()))
                        .map(member -> member.ghost().name())
                        .toList());
    }

    private static List<@Nullable RangeText> limits(List<Column> columns) {
        List<@Nullable RangeText> limits = new ArrayList<>();
        columns.forEach(column -> limits.add(column.limits()));
        return limits;
    }

    private static PackageRow row(ClassDrawing.Member member, List<Column> columns) {
        return new PackageRow(
                member.id(),
                member.ghost().name(),
                columns.stream().map(column -> column.value(member.id())).toList());
    }

    /** Whether there is a line to see; public because the page asks. */
    public boolean any() {
        return !drawing.lines().isEmpty();
    }

    /** Whether the class has packages, none of which can be drawn. */
    public boolean undrawable() {
        return packages > 0 && !any();
    }

    /** Whether the class was too large to draw all of it. */
    public boolean thinned() {
        return step > 1;
    }

    /** Whether one package is the whole class. */
    public boolean alone() {
        return packages == 1 && any();
    }

    /** How many lines there are. */
    public int lines() {
        return drawing.lines().size();
    }

    /** One measure of the table. */
    private static final class Column {

        private final Measure measure;
        private final SortedColumn sorted;
        private final @Nullable ClassZone zone;
        private final Map<Long, Double> values = new HashMap<>();

        Column(ClassSnapshot snapshot, Measure measure, @Nullable ClassZone zone) {
            this.measure = measure;
            this.zone = zone;
            this.sorted = snapshot.column(measure.key());
            for (Tick tick : snapshot.ticks(measure.key())) {
                values.put(tick.packageId(), tick.value());
            }
        }

        String name() {
            return measure.name();
        }

        String median() {
            return sorted.isEmpty() ? "" : text(sorted.median());
        }

        @Nullable
        RangeText limits() {
            return zone == null ? null : RangeText.of(zone.limits(), measure);
        }

        String value(long id) {
            Double value = values.get(id);
            return value == null ? "" : text(value);
        }

        private String text(double value) {
            return NumberText.shown(value, measure.decimals());
        }
    }
}
