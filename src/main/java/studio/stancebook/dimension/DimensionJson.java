package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;

/**
 * A dimension set as the plain tree that JSON reads into and is written from: the shape of the HTTP interface, with
 * {@code uncertainties} and {@code origins} beside the values. Keys come out in a fixed order.
 */
public final class DimensionJson {

    private DimensionJson() {}

    /**
     * Reads a tree. Every problem is looked for before it is refused.
     *
     * @param tree as a JSON library reads an object: numbers, strings, lists, maps
     * @param origin the origin of values that name none
     * @throws ImpossibleDimensions naming each field under {@code dimensions.}
     */
    public static DimensionSet read(Map<String, ?> tree, Origin origin) {
        ErrorList errors = new ErrorList();
        DimensionSetBuilder read = new DimensionReader(tree, origin, errors::add).read();
        if (!errors.isEmpty()) {
            throw new ImpossibleDimensions(errors);
        }
        return read.build();
    }

    /**
     * Reads a tree for its problems alone.
     *
     * @param each told of every one, each naming a field under {@code dimensions.}
     */
    public static void problems(Map<String, ?> tree, Origin origin, Consumer<FieldError> each) {
        new DimensionReader(tree, origin, error -> each.accept(error.get())).read();
    }

    /** The tree of a set; {@code read} of it gives the same set back, but for who recorded what. */
    public static Map<String, Object> write(DimensionSet set) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (set.scale() != Scale.MILLIMETRES) {
            tree.put("scale", set.scale().key());
        }
        if (set.edition() != Edition.OLDER) {
            tree.put("edition", set.edition().key());
        }
        set.tyres().forEach((axle, tyre) -> tree.put(axle.tyreKey(), tyre.text()));
        set.scalars().forEach((dimension, value) -> tree.put(dimension.key(), number(value)));
        set.landmarks().forEach((landmark, point) -> tree.put(landmark.key(), pair(point)));
        set.polylines()
                .forEach((polyline, points) -> tree.put(
                        polyline.key(), points.stream().map(DimensionJson::pair).toList()));
        if (!set.uncertainties().isEmpty()) {
            Map<String, Object> uncertainties = new LinkedHashMap<>();
            set.uncertainties().forEach((key, value) -> uncertainties.put(key, number(value)));
            tree.put("uncertainties", uncertainties);
        }
        if (!set.origins().isEmpty()) {
            Map<String, Object> origins = new LinkedHashMap<>();
            set.origins().forEach((key, value) -> origins.put(key, value.key()));
            tree.put("origins", origins);
        }
        return tree;
    }

    /** The values of {@link #write} side by side, the inner ones under names such as {@code origins.wheelbase}. */
    public static Map<String, String> flat(DimensionSet set) {
        Map<String, String> flat = new LinkedHashMap<>();
        write(set).forEach((key, value) -> {
            if (value instanceof Map<?, ?> inner) {
                inner.forEach((innerKey, innerValue) -> flat.put(key + "." + innerKey, String.valueOf(innerValue)));
            } else {
                flat.put(key, String.valueOf(value));
            }
        });
        return flat;
    }

    /** The tree of who recorded what and when: {@code {"wheelbase": {"by": "...", "byId": 7, "at": "..."}}}. */
    public static Map<String, Object> writeRecorded(DimensionSet set) {
        Map<String, Object> tree = new LinkedHashMap<>();
        set.recorded().forEach((key, mark) -> tree.put(key, writeMark(mark)));
        return tree;
    }

    /** Who recorded a value and when; without an id where only the name is known. */
    public static Map<String, Object> writeMark(Recorded mark) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("by", mark.by());
        if (mark.personId() != null) {
            tree.put("byId", mark.personId());
        }
        tree.put("at", mark.at().toString());
        return tree;
    }

    /** Adds the marks that {@link #writeRecorded} wrote. */
    public static DimensionSet withRecorded(DimensionSet set, Map<String, ?> tree) {
        DimensionSetBuilder builder = set.toBuilder();
        tree.forEach((key, value) -> DimensionReader.mark(value).ifPresent(mark -> builder.recorded(key, mark)));
        return builder.build();
    }

    private static List<Object> pair(Point point) {
        List<Object> pair = new ArrayList<>(2);
        pair.add(number(point.x()));
        pair.add(number(point.z()));
        return pair;
    }

    /** A whole number as such, so that 2850 does not become 2850.0. */
    private static Number number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15 ? (Number) (long) value : (Number) value;
    }
}
