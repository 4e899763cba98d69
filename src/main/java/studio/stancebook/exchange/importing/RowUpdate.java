package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.AsideDraft;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageUpdate;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SetAside;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.exchange.mapping.Field;

/**
 * A row about a package that is there: what the row holds takes the place of what is recorded; what it leaves blank stays.
 *
 * @param update null where nothing recorded changes
 * @param aside null where nothing more is set aside
 * @param change what differs; without values where nothing does
 */
record RowUpdate(@Nullable PackageUpdate update, @Nullable AsideDraft aside, RowChange change) {

    static RowUpdate of(Accepted row, PackageView there) {
        PackageDraft read = row.draft();
        Origin origin = row.named().contains(Field.ORIGIN) ? read.origin() : there.origin();
        DimensionSet merged = merged(row, there.dimensions());
        List<ValueChange> changes = new ArrayList<>();
        compare(Field.ORIGIN.key(), there.origin().key(), origin.key(), changes);
        compare(there.dimensions(), merged, changes);
        boolean differs = !changes.isEmpty();
        AsideDraft aside = aside(row, there, changes);
        PackageDraft draft =
                new PackageDraft(there.name(), there.segment(), there.modelYear(), origin, merged, read.queries());
        return new RowUpdate(
                differs ? new PackageUpdate(there.id(), there.version(), draft) : null,
                aside,
                new RowChange(row.row(), there.id(), there.title(), changes));
    }

    boolean unchanged() {
        return change.values().isEmpty();
    }

    private static DimensionSet merged(Accepted row, DimensionSet there) {
        DimensionSet read = row.draft().dimensions();
        DimensionSetBuilder merged = there.toBuilder();
        if (row.named().contains(Field.SCALE)) {
            merged.scale(read.scale());
        }
        if (row.named().contains(Field.EDITION)) {
            merged.edition(read.edition());
        }
        boolean namesOrigin = row.named().contains(Field.ORIGIN);
        Origin origin = namesOrigin ? read.origin() : there.origin();
        merged.origin(origin);
        for (String key : read.valueKeys()) {
            if (!Objects.equals(read.value(key), there.value(key))) {
                copy(key, read, merged.without(key));
                if (read.origin() != origin) {
                    merged.origin(key, read.origin());
                }
            }
        }
        read.uncertainties().forEach(merged::uncertainty);
        read.origins().forEach(merged::origin);
        return merged.build();
    }

    private static void copy(String key, DimensionSet from, DimensionSetBuilder to) {
        Dimension.ofKey(key)
                .ifPresent(dimension -> from.scalar(dimension).ifPresent(value -> to.set(dimension, value)));
        Landmark.ofKey(key)
                .ifPresent(
                        landmark -> from.landmark(landmark).ifPresent(point -> to.set(landmark, point.x(), point.z())));
        Polyline.ofKey(key).ifPresent(polyline -> to.set(polyline, from.points(polyline)));
        for (Axle axle : Axle.values()) {
            if (axle.tyreKey().equals(key)) {
                from.tyre(axle).ifPresent(tyre -> to.tyre(axle, tyre));
            }
        }
    }

    private static void compare(DimensionSet there, DimensionSet merged, List<ValueChange> changes) {
        Map<String, String> before = DimensionJson.flat(there);
        Map<String, String> after = DimensionJson.flat(merged);
        Map<String, String> all = new LinkedHashMap<>(after);
        before.forEach(all::putIfAbsent);
        all.keySet().forEach(key -> compare(key, before.getOrDefault(key, ""), after.getOrDefault(key, ""), changes));
    }

    private static void compare(String key, String before, String after, List<ValueChange> changes) {
        if (!before.equals(after)) {
            changes.add(new ValueChange(key, before, after));
        }
    }

    private static @Nullable AsideDraft aside(Accepted row, PackageView there, List<ValueChange> changes) {
        int before = changes.size();
        String reason = differing(Field.SET_ASIDE.key(), row.setAside(), there.setAside(), changes);
        Map<String, String> values = new TreeMap<>();
        new TreeMap<>(row.valuesSetAside()).forEach((key, why) -> {
            String differing = differing(
                    Field.SET_ASIDE.key() + "." + key,
                    why,
                    there.valuesSetAside().get(key),
                    changes);
            if (differing != null) {
                values.put(key, differing);
            }
        });
        return changes.size() == before ? null : new AsideDraft(there.id(), reason, values);
    }

    private static @Nullable String differing(
            String key, @Nullable String reason, @Nullable SetAside there, List<ValueChange> changes) {
        String stripped = reason == null ? "" : reason.strip();
        String known = there == null ? "" : there.reason();
        if (stripped.isEmpty() || stripped.equals(known)) {
            return null;
        }
        changes.add(new ValueChange(key, known, stripped));
        return stripped;
    }
}
