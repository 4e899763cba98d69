package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.PlausibleCells;
import studio.stancebook.exchange.mapping.Problems;
import studio.stancebook.exchange.mapping.RowDraft;
import studio.stancebook.exchange.mapping.RowReading;

/** Reads one package of a JSON file by the same rules as a row of a table. */
final class JsonPackage {

    private static final String DIMENSIONS = "dimensions";

    private final ImportOptions options;

    JsonPackage(ImportOptions options) {
        this.options = options;
    }

    /** @param tree the package; null when it is no object */
    RowReading read(long row, @Nullable Map<?, ?> tree) {
        Problems problems = new Problems(row, tree == null ? "" : text(tree, Field.NAME), options.partial());
        RowDraft draft = null;
        if (tree == null) {
            problems.error("", "", "A package is an object, {\"name\": ..., \"segment\": ..., \"dimensions\": {...}}.");
        } else {
            draft = draft(tree, problems);
        }
        return new RowReading(row, problems.anyError() ? null : draft, problems, UnaryOperator.identity(), null);
    }

    private @Nullable RowDraft draft(Map<?, ?> tree, Problems problems) {
        String name = required(tree, Field.NAME, problems);
        String segment = required(tree, Field.SEGMENT, problems);
        Origin origin = origin(tree, problems);
        DimensionSet set = dimensions(tree.get(DIMENSIONS), origin, problems);
        return set == null
                ? null
                : new RowDraft(
                        name,
                        segment,
                        text(tree, Field.SEGMENT_NAME),
                        modelYear(tree, problems),
                        origin,
                        set,
                        reason(tree.get(Field.SET_ASIDE.key())),
                        reasons(tree.get(Field.VALUES_SET_ASIDE.key())),
                        questions(tree.get(Field.QUERIES.key())),
                        named(tree));
    }

    private static Set<Field> named(Map<?, ?> tree) {
        Set<Field> named = EnumSet.noneOf(Field.class);
        if (tree.get(Field.ORIGIN.key()) != null) {
            named.add(Field.ORIGIN);
        }
        if (tree.get(DIMENSIONS) instanceof Map<?, ?> dimensions) {
            Stream.of(Field.SCALE, Field.EDITION)
                    .filter(field -> dimensions.get(field.key()) != null)
                    .forEach(named::add);
        }
        return named;
    }

    private static String text(Map<?, ?> tree, Field field) {
        return tree.get(field.key()) instanceof String text ? text.strip() : "";
    }

    private static String required(Map<?, ?> tree, Field field, Problems problems) {
        String text = text(tree, field);
        if (text.isEmpty()) {
            problems.error(field.key(), shown(tree.get(field.key())), "The package has no " + field.key() + ".");
        }
        return text;
    }

    private Origin origin(Map<?, ?> tree, Problems problems) {
        Object value = tree.get(Field.ORIGIN.key());
        Optional<Origin> origin = value instanceof String text ? Origin.ofKey(text) : Optional.empty();
        if (value != null && origin.isEmpty()) {
            problems.unreadable(Field.ORIGIN.key(), shown(value), "It is no origin.");
        }
        return origin.orElse(options.origin());
    }

    private static @Nullable Integer modelYear(Map<?, ?> tree, Problems problems) {
        Object value = tree.get(Field.MODEL_YEAR.key());
        if (value == null || value instanceof Integer) {
            return (Integer) value;
        }
        problems.unreadable(Field.MODEL_YEAR.key(), shown(value), "A model year is a whole number.");
        return null;
    }

    private @Nullable DimensionSet dimensions(@Nullable Object value, Origin origin, Problems problems) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, entry) -> {
                if (entry != null) {
                    tree.put(String.valueOf(key), entry);
                }
            });
        }
        DimensionSet set = read(tree, origin, problems);
        return set == null
                ? null
                : PlausibleCells.values(set, key -> DIMENSIONS + "." + key, key -> shown(tree.get(key)), problems);
    }

    /** Reads what can be read; what cannot is left out of a second reading, unless it is the wheelbase. */
    private static @Nullable DimensionSet read(Map<String, Object> tree, Origin origin, Problems problems) {
        try {
            return DimensionJson.read(tree, origin);
        } catch (ImpossibleDimensions impossible) {
            List<String> wrong = new ArrayList<>();
            DimensionJson.problems(tree, origin, error -> {
                String key = error.field().substring(DIMENSIONS.length() + 1);
                wrong.add(key);
                if (key.equals(Dimension.WHEELBASE.key())) {
                    problems.error(error.field(), shown(tree.get(key)), error.message());
                } else {
                    problems.unreadable(error.field(), "", error.message());
                }
            });
            if (problems.anyError()) {
                return null;
            }
            wrong.forEach(key -> leaveOut(tree, key));
            return DimensionJson.read(tree, origin);
        }
    }

    private static void leaveOut(Map<String, Object> tree, String key) {
        if (tree.remove(key) != null) {
            return;
        }
        int dot = key.indexOf('.');
        String first = (dot < 0 ? key : key.substring(0, dot)).replaceFirst("\\[.*", "");
        if (dot > 0 && tree.get(first) instanceof Map<?, ?> map) {
            map.remove(key.substring(dot + 1));
        } else {
            tree.remove(first);
        }
    }

    /** A reason alone, or with who and when as it is answered. */
    private static @Nullable String reason(@Nullable Object value) {
        Object reason = value instanceof Map<?, ?> map ? map.get("reason") : value;
        return reason instanceof String text && !text.isBlank() ? text.strip() : null;
    }

    private static Map<String, String> reasons(@Nullable Object value) {
        Map<String, String> reasons = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, entry) -> {
                String reason = reason(entry);
                if (reason != null) {
                    reasons.put(String.valueOf(key), reason);
                }
            });
        }
        return reasons;
    }

    /** Texts; the queries of an answer, which are objects, are raised anew where they still hold. */
    private static List<String> questions(@Nullable Object value) {
        List<String> questions = new ArrayList<>();
        if (value instanceof List<?> list) {
            list.forEach(entry -> {
                if (entry instanceof String text && !text.isBlank()) {
                    questions.add(text);
                }
            });
        }
        return questions;
    }

    private static String shown(@Nullable Object value) {
        if (value instanceof List<?> || value instanceof Map<?, ?>) {
            return "";
        }
        return value == null ? "" : String.valueOf(value);
    }
}
