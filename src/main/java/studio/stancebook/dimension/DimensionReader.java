package studio.stancebook.dimension;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Refusal;
import studio.stancebook.quantity.NumberReading;
import studio.stancebook.tyre.TyreDesignation;

/** Reads the tree of {@link DimensionJson}, telling of every problem. */
final class DimensionReader {

    private static final String PREFIX = "dimensions.";
    private static final int LONGEST_NAME = 240;

    private final Map<String, ?> tree;
    private final DimensionSetBuilder builder;

    private final Consumer<Supplier<FieldError>> errors;

    /** @param errors takes every problem, each to be made only if it is wanted */
    DimensionReader(Map<String, ?> tree, Origin origin, Consumer<Supplier<FieldError>> errors) {
        this.tree = tree;
        this.errors = errors;
        this.builder = DimensionSet.builder().origin(origin);
    }

    /** What can be read. */
    DimensionSetBuilder read() {
        tree.forEach(this::readEntry);
        if (tree.get(Dimension.WHEELBASE.key()) == null) {
            refuse(Dimension.WHEELBASE.key(), "The wheelbase (L101) is needed, in mm.");
        }
        return builder;
    }

    private void refuse(String key, String message) {
        errors.accept(() -> new FieldError(PREFIX + shortened(key), message));
    }

    private void readEntry(String key, @Nullable Object value) {
        if (value == null) {
            return;
        }
        switch (key) {
            case "scale" -> choice(key, value, Scale.values(), Scale::key, builder::scale);
            case "edition" -> choice(key, value, Edition.values(), Edition::key, builder::edition);
            case "frontTyre" -> tyre(Axle.FRONT, value);
            case "rearTyre" -> tyre(Axle.REAR, value);
            case "uncertainties" -> uncertainties(value);
            case "origins" -> origins(value);
            default -> readValue(key, value);
        }
    }

    private void readValue(String key, Object value) {
        Optional<Dimension> dimension = Dimension.ofKey(key);
        Optional<Landmark> landmark = Landmark.ofKey(key);
        Optional<Polyline> polyline = Polyline.ofKey(key);
        if (dimension.isPresent()) {
            number(key, value).ifPresent(number -> builder.set(dimension.get(), number));
        } else if (landmark.isPresent()) {
            point(key, value).ifPresent(point -> builder.set(landmark.get(), point.x(), point.z()));
        } else if (polyline.isPresent()) {
            points(polyline.get(), value);
        } else {
            refuse(key, "There is no dimension, landmark or polyline of this name.");
        }
    }

    private <T> void choice(
            String key, Object value, T[] choices, java.util.function.Function<T, String> name, Consumer<T> set) {
        for (T choice : choices) {
            if (name.apply(choice).equals(value)) {
                set.accept(choice);
                return;
            }
        }
        refuse(
                key,
                shown(value) + " is none of "
                        + String.join(", ", Arrays.stream(choices).map(name).toList()) + ".");
    }

    private void tyre(Axle axle, Object value) {
        if (!(value instanceof String text)) {
            refuse(axle.tyreKey(), "A tyre designation is a text such as 265/70R17, not " + shown(value) + ".");
            return;
        }
        try {
            builder.tyre(axle, TyreDesignation.parse(text));
        } catch (Refusal refusal) {
            refuse(axle.tyreKey(), refusal.detail());
        }
    }

    private Optional<Double> number(String key, @Nullable Object value) {
        if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
            return Optional.of(number.doubleValue());
        }
        NumberReading typed = value instanceof String text ? NumberReading.of(text) : NumberReading.none();
        refuse(key, "A number is needed, not " + shown(value) + "." + (typed.ambiguous() ? " " + typed.fault() : ""));
        return Optional.empty();
    }

    private Optional<Point> point(String key, @Nullable Object value) {
        if (!(value instanceof List<?> pair) || pair.size() != 2) {
            refuse(key, "A point is [x, z] in mm, not " + shown(value) + ".");
            return Optional.empty();
        }
        Optional<Double> x = number(key, pair.get(0));
        Optional<Double> z = number(key, pair.get(1));
        return x.isPresent() && z.isPresent() ? Optional.of(new Point(x.get(), z.get())) : Optional.empty();
    }

    private void points(Polyline polyline, Object value) {
        if (!(value instanceof List<?> list)
                || list.size() < polyline.fewestPoints()
                || list.size() > Polyline.MOST_POINTS) {
            refuse(
                    polyline.key(),
                    polyline.label() + " is a list of " + polyline.fewestPoints() + " to " + Polyline.MOST_POINTS
                            + " points [[x, z], ...], not " + shown(value) + ".");
            return;
        }
        List<Point> points = new ArrayList<>(list.size());
        for (int i = 0; i < list.size(); i++) {
            point(polyline.key() + "[" + i + "]", list.get(i)).ifPresent(points::add);
        }
        builder.set(polyline, points);
    }

    private void uncertainties(Object value) {
        entries(
                "uncertainties",
                value,
                (key, entry) ->
                        number("uncertainties." + key, entry).ifPresent(number -> builder.uncertainty(key, number)));
    }

    private void origins(Object value) {
        entries("origins", value, (key, entry) -> {
            Optional<Origin> origin = entry instanceof String text ? Origin.ofKey(text) : Optional.empty();
            origin.ifPresentOrElse(
                    known -> builder.origin(key, known),
                    () -> refuse("origins." + key, shown(entry) + " is none of " + originKeys() + "."));
        });
    }

    private static String originKeys() {
        return String.join(", ", Arrays.stream(Origin.values()).map(Origin::key).toList());
    }

    private void entries(String field, Object value, java.util.function.BiConsumer<String, @Nullable Object> each) {
        if (!(value instanceof Map<?, ?> map)) {
            refuse(field, "This is an object from dimension names to values, not " + shown(value) + ".");
            return;
        }
        map.forEach((name, entry) -> {
            String key = String.valueOf(name);
            if (isValueKey(key)) {
                each.accept(key, entry);
            } else {
                refuse(field + "." + key, "There is no dimension, landmark or polyline of this name.");
            }
        });
    }

    private static boolean isValueKey(String key) {
        return Dimension.ofKey(key).isPresent()
                || Landmark.ofKey(key).isPresent()
                || Polyline.ofKey(key).isPresent()
                || Arrays.stream(Axle.values()).anyMatch(axle -> axle.tyreKey().equals(key));
    }

    /** A name as it may be repeated in a message; none that is known is so long. */
    private static String shortened(String key) {
        return key.length() <= LONGEST_NAME ? key : key.substring(0, LONGEST_NAME) + "...";
    }

    /** A value as it may be repeated in a message: short, whatever was sent. */
    private static String shown(@Nullable Object value) {
        if (value instanceof List<?> list) {
            return "a list of " + list.size();
        }
        if (value instanceof Map<?, ?>) {
            return "an object";
        }
        String text = String.valueOf(value);
        return text.length() <= 40 ? "\"" + text + "\"" : "\"" + text.substring(0, 40) + "...\"";
    }

    static Optional<Recorded> mark(Object value) {
        if (value instanceof Map<?, ?> map
                && map.get("by") instanceof String by
                && map.get("at") instanceof String at) {
            try {
                Long id = map.get("byId") instanceof Number number ? (Long) number.longValue() : null;
                return Optional.of(new Recorded(id, by, Instant.parse(at)));
            } catch (DateTimeParseException unreadable) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }
}
