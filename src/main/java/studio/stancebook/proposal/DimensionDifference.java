package studio.stancebook.proposal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.Point;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.tyre.TyreDesignation;

/** What differs between the dimensions of two revisions. */
public final class DimensionDifference {

    private static final int DECIMALS = 3;

    private final DimensionSet before;
    private final DimensionSet after;
    private final List<DimensionChange> changes = new ArrayList<>();

    private DimensionDifference(DimensionSet before, DimensionSet after) {
        this.before = before;
        this.after = after;
    }

    /** Values first, in the order of their kinds; then uncertainties and origins. */
    public static List<DimensionChange> between(DimensionSet before, DimensionSet after) {
        DimensionDifference difference = new DimensionDifference(before, after);
        difference.scale();
        Set<String> keys = new LinkedHashSet<>(after.valueKeys());
        keys.addAll(before.valueKeys());
        keys.forEach(difference::value);
        keys.forEach(difference::uncertainty);
        keys.forEach(difference::origin);
        return List.copyOf(difference.changes);
    }

    private void scale() {
        if (before.scale() != after.scale()) {
            changes.add(new DimensionChange(
                    "Scale", before.scale().key(), after.scale().key(), ""));
        }
    }

    private void value(String key) {
        Object from = before.value(key);
        Object to = after.value(key);
        if (from == null ? to != null : !from.equals(to)) {
            changes.add(new DimensionChange(label(key), text(key, from), text(key, to), difference(key, from, to)));
        }
    }

    private void uncertainty(String key) {
        Double from = before.uncertainties().get(key);
        Double to = after.uncertainties().get(key);
        if (from == null ? to != null : !from.equals(to)) {
            changes.add(new DimensionChange(
                    label(key) + ", standard uncertainty", text(key, from), text(key, to), difference(key, from, to)));
        }
    }

    private void origin(String key) {
        if (before.value(key) != null && after.value(key) != null && before.originOf(key) != after.originOf(key)) {
            changes.add(new DimensionChange(
                    label(key) + ", origin",
                    before.originOf(key).label(),
                    after.originOf(key).label(),
                    ""));
        }
    }

    private static String label(String key) {
        return Dimension.ofKey(key)
                .map(dimension -> LeaningAngles.words(key, dimension.label()))
                .or(() -> Landmark.ofKey(key).map(Landmark::label))
                .or(() -> Polyline.ofKey(key).map(Polyline::label))
                .orElse(key.equals(Axle.FRONT.tyreKey()) ? "Front tyre" : "Rear tyre");
    }

    private String text(String key, @Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            return number(key, number) + unit(key);
        }
        if (value instanceof Point point) {
            return "x " + number(key, point.x()) + ", z " + number(key, point.z()) + unit(key);
        }
        if (value instanceof List<?> points) {
            return points.size() + " points";
        }
        return value instanceof TyreDesignation tyre ? tyre.text() : String.valueOf(value);
    }

    private String difference(String key, @Nullable Object from, @Nullable Object to) {
        if (from instanceof Double first && to instanceof Double second) {
            return signed(key, second - first) + unit(key);
        }
        if (from instanceof Point first && to instanceof Point second) {
            return "x " + signed(key, second.x() - first.x()) + ", z " + signed(key, second.z() - first.z())
                    + unit(key);
        }
        return "";
    }

    private String unit(String key) {
        Unit unit = unitOf(key);
        boolean sketch = unit == Unit.MM && after.scale() == Scale.UNSCALED;
        return Optional.of(unit == Unit.MM ? ShownUnits.symbol() : unit.symbol())
                .filter(symbol -> !symbol.isEmpty() && !sketch)
                .map(symbol -> unit == Unit.DEG ? symbol : " " + symbol)
                .orElse("");
    }

    private String number(String key, double value) {
        double shown = LeaningAngles.value(key, value);
        return written(key, shown);
    }

    private String signed(String key, double change) {
        double shown = LeaningAngles.change(key, change);
        return (shown > 0 ? "+" : "") + written(key, shown);
    }

    private String written(String key, double value) {
        return (length(key) ? ShownUnits.plain(value, DECIMALS) : NumberText.plain(value, DECIMALS))
                .replace('-', '\u2212');
    }

    private boolean length(String key) {
        return unitOf(key) == Unit.MM && after.scale() != Scale.UNSCALED;
    }

    private static Unit unitOf(String key) {
        return Dimension.ofKey(key).map(Dimension::unit).orElse(Unit.MM);
    }
}
