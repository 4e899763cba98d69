package studio.stancebook.dimension.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import studio.stancebook.dimension.DimensionSet;

/** Two dimension sets input by input, written in the same way: lengths in mm, angles from the horizontal. */
public final class VersionRows {

    private VersionRows() {}

    /**
     * A row for each input of the dimension form.
     *
     * @param words the words of a message key with what goes into its places
     */
    public static List<VersionRow> of(
            DimensionSet yours, DimensionSet theirs, BiFunction<String, Object[], String> words) {
        DimensionForm mine = DimensionForm.of(yours);
        DimensionForm kept = DimensionForm.of(theirs);
        List<VersionRow> rows = new ArrayList<>();
        labels(words).forEach((name, label) -> rows.add(new VersionRow(name, label, mine.text(name), kept.text(name))));
        return rows;
    }

    private static Map<String, String> labels(BiFunction<String, Object[], String> words) {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(FormSettings.SCALE, words.apply("dimension.form.scale", new Object[0]));
        labels.put(FormSettings.EDITION, words.apply("dimension.form.edition", new Object[0]));
        List<Section> sections = DimensionForm.blank().sections();
        sections.forEach(section -> addValues(section, labels));
        labels.put(RearTyre.DIFFERS, words.apply("dimension.form.rear-differs", new Object[0]));
        sections.forEach(section -> section.doubts().forEach(doubt -> addDoubt(doubt, labels, words)));
        return labels;
    }

    private static void addValues(Section section, Map<String, String> labels) {
        section.entries().forEach(entry -> labels.put(entry.name(), entry.labelAndUnit()));
        RearTyre rear = section.rear();
        if (rear != null) {
            labels.put(rear.entry().name(), rear.entry().labelAndUnit());
        }
        section.points().forEach(point -> {
            labels.put(point.x().name(), point.x().labelAndUnit());
            labels.put(point.z().name(), point.z().labelAndUnit());
        });
        section.lines().forEach(line -> labels.put(line.name(), line.labelAndUnit()));
    }

    private static void addDoubt(Doubt doubt, Map<String, String> labels, BiFunction<String, Object[], String> words) {
        Object[] place = {doubt.label()};
        labels.put(doubt.uncertainty().name(), words.apply("dimension.form.uncertainty-of", place));
        labels.put(doubt.origin().name(), words.apply("dimension.form.origin-of", place));
    }
}
