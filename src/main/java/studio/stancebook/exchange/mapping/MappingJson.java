package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Unit;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;

/**
 * Reads the mapping of the HTTP interface, one entry a column: {@code {"id": {"field": "name"}, "wheelbase_in":
 * {"dimension": "wheelbase", "unit": "in"}, "tire": {"dimension": "tyre", "part": "size"}}}.
 */
public final class MappingJson {

    private final List<String> headings;
    private final ErrorList errors = new ErrorList();
    private final List<ColumnUse> uses = new ArrayList<>();

    private MappingJson(List<String> headings) {
        this.headings = headings;
    }

    /**
     * @param tree as a JSON library reads the object
     * @param headings of the table
     * @throws ImpossibleMapping naming every entry that cannot be followed, and what is accepted instead
     */
    public static Mapping read(Map<String, ?> tree, List<String> headings) {
        MappingJson reading = new MappingJson(headings);
        tree.forEach(reading::entry);
        if (!reading.errors.isEmpty()) {
            throw new ImpossibleMapping(reading.errors);
        }
        reading.uses.sort(java.util.Comparator.comparingInt(ColumnUse::index));
        return new Mapping(reading.uses);
    }

    private void entry(String heading, @Nullable Object value) {
        int index = headings.indexOf(heading.strip());
        if (index < 0) {
            refuse(
                    heading,
                    () -> "The table has no column \"" + TextLimit.shown(heading) + "\", but: "
                            + headings.stream()
                                    .map(h -> "\"" + TextLimit.shown(h) + "\"")
                                    .limit(20)
                                    .collect(Collectors.joining(", "))
                            + ".");
        } else if (headings.lastIndexOf(heading.strip()) != index) {
            refuse(
                    heading,
                    () -> "The table has two columns \"" + TextLimit.shown(heading) + "\"; rename one of them.");
        } else if (!(value instanceof Map<?, ?> map) || !map.values().stream().allMatch(MappingJson::isText)) {
            refuse(heading, () -> "An entry is an object such as {\"dimension\": \"wheelbase\", \"unit\": \"mm\"}.");
        } else {
            target(heading, map).ifPresent(target -> use(index, heading, target, text(map, "unit")));
        }
    }

    private static boolean isText(@Nullable Object value) {
        return value instanceof String || value instanceof Number;
    }

    private static String text(Map<?, ?> map, String key) {
        Object value = map.get(key);
        return value == null ? "" : value.toString();
    }

    private Optional<Target> target(String heading, Map<?, ?> map) {
        String field = text(map, "field");
        String dimension = text(map, "dimension");
        if (field.isEmpty() == dimension.isEmpty()) {
            refuse(heading, () -> "An entry names either a field or a dimension.");
            return Optional.empty();
        }
        return field.isEmpty() ? dimension(heading, dimension, text(map, "part")) : field(heading, field);
    }

    private Optional<Target> field(String heading, String field) {
        Optional<Target> target = Targets.field(field);
        if (target.isEmpty()) {
            refuse(
                    heading,
                    () -> "\"" + TextLimit.shown(field) + "\" is none of the fields "
                            + java.util.Arrays.stream(Field.values())
                                    .map(Field::key)
                                    .collect(Collectors.joining(", ")) + ".");
        }
        return target;
    }

    private Optional<Target> dimension(String heading, String dimension, String part) {
        Optional<Target> target = Targets.dimension(dimension, part);
        if (target.isEmpty()) {
            List<String> parts = Targets.parts(dimension);
            refuse(
                    heading,
                    () -> parts.isEmpty()
                            ? "There is no dimension, landmark or polyline \"" + TextLimit.shown(dimension) + "\"."
                            : dimension + " takes the parts "
                                    + parts.stream()
                                            .map(known -> known.isEmpty() ? "(none)" : known)
                                            .collect(Collectors.joining(", "))
                                    + ", not \"" + TextLimit.shown(part) + "\".");
        }
        return target;
    }

    private void use(int index, String heading, Target target, String unit) {
        Unit kept = target.unit();
        if (kept == null || !takesUnit(target)) {
            uses.add(new ColumnUse(index, heading.strip(), target, ColumnUnit.NONE));
            return;
        }
        Optional<ColumnUnit> known = unit.isEmpty() ? Optional.of(ColumnUnit.natural(kept)) : ColumnUnit.ofKey(unit);
        known.filter(u -> fits(target, u))
                .ifPresentOrElse(
                        fitting -> uses.add(new ColumnUse(index, heading.strip(), target, fitting)),
                        () -> refuse(
                                heading,
                                () -> "\"" + TextLimit.shown(unit) + "\" is no unit of " + target.name() + "; it takes "
                                        + unitsOf(target) + "."));
    }

    /** Whether a column of this has to say its unit. */
    public static boolean takesUnit(Target target) {
        return target.unit() != null && target.unit() != Unit.COUNT;
    }

    /** The keys of all units that a target can be in. */
    public static String unitsOf(Target target) {
        return java.util.Arrays.stream(ColumnUnit.values())
                .filter(unit -> fits(target, unit))
                .map(ColumnUnit::key)
                .collect(Collectors.joining(", "));
    }

    /** Whether a target can be in a unit; only slopes are measured from the vertical. */
    public static boolean fits(Target target, ColumnUnit unit) {
        boolean slope = target.name().equals("screenAngle") || target.name().equals("backlightAngle");
        return unit.kept() == target.unit() && (unit != ColumnUnit.DEG_FROM_VERTICAL || slope);
    }

    private void refuse(String heading, Supplier<String> message) {
        errors.add(() -> new FieldError("mapping." + TextLimit.shown(heading), message.get()));
    }
}
