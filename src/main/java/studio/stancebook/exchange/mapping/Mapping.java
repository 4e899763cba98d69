package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.exchange.mapping.Target.TyrePart;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;

/**
 * What the columns of a table hold; columns without a use are ignored. Name, segment and wheelbase each have a column, no
 * two columns set the same value, and what is split over columns is there whole.
 *
 * @param uses in the order of the columns
 */
public record Mapping(List<ColumnUse> uses) {

    /** @throws ImpossibleMapping naming everything that is missing or doubled */
    public Mapping {
        uses = List.copyOf(uses);
        List<FieldError> errors = new ArrayList<>();
        errors.addAll(doubled(uses));
        errors.addAll(missing(uses));
        if (!errors.isEmpty()) {
            throw new ImpossibleMapping(ErrorList.of(errors));
        }
    }

    private static List<FieldError> doubled(List<ColumnUse> uses) {
        List<FieldError> errors = new ArrayList<>();
        Map<String, ColumnUse> seen = new HashMap<>();
        for (ColumnUse use : uses) {
            for (String value : use.target().sets()) {
                ColumnUse first = seen.putIfAbsent(value, use);
                if (first != null) {
                    errors.add(new FieldError(
                            "mapping." + use.heading(),
                            "The columns \"" + TextLimit.shown(first.heading()) + "\" and \""
                                    + TextLimit.shown(use.heading()) + "\" both set " + value
                                    + "; one of them has to go."));
                }
            }
        }
        return errors;
    }

    private static List<FieldError> missing(List<ColumnUse> uses) {
        Set<String> set = new LinkedHashSet<>();
        uses.forEach(use -> set.addAll(use.target().sets()));
        List<FieldError> errors = new ArrayList<>();
        for (String needed : List.of("field:name", "field:segment", Dimension.WHEELBASE.key())) {
            if (!set.contains(needed)) {
                String name = needed.replace("field:", "");
                errors.add(new FieldError("mapping", "No column holds the " + name + "; every package needs one."));
            }
        }
        uses.forEach(use -> otherHalf(use.target())
                .filter(half -> !set.contains(half))
                .ifPresent(half -> errors.add(new FieldError(
                        "mapping." + use.heading(),
                        "The column \"" + TextLimit.shown(use.heading()) + "\" needs another one for " + half + "."))));
        return errors;
    }

    /** What has to be there beside a target. */
    private static Optional<String> otherHalf(Target target) {
        if (target instanceof Target.OfLandmark landmark) {
            return Optional.of(landmark.name() + (landmark.part().equals("x") ? ".z" : ".x"));
        }
        if (target instanceof Target.OfTyre tyre && tyre.what() != TyrePart.WHOLE) {
            return Optional.of(tyre.axles().get(0).tyreKey() + (tyre.what() == TyrePart.RIM ? ":size" : ":rim"));
        }
        return target instanceof Target.OfPolyline line && line.number() > 1
                ? Optional.of(line.name() + "." + (line.number() - 1))
                : Optional.empty();
    }

    /** The column of a field. */
    Optional<ColumnUse> field(Field field) {
        return uses.stream()
                .filter(use -> use.target() instanceof Target.OfField of && of.what() == field)
                .findFirst();
    }

    /** The columns that set a value or a part of it, by its JSON name. */
    List<ColumnUse> of(String valueKey) {
        return uses.stream()
                .filter(use -> use.target().sets().stream().anyMatch(set -> isOrIsPartOf(set, valueKey)))
                .toList();
    }

    /** The headings of the columns that set a value. */
    String headingsOf(String valueKey) {
        return String.join(", ", of(valueKey).stream().map(ColumnUse::heading).toList());
    }

    private static boolean isOrIsPartOf(String set, String valueKey) {
        return set.equals(valueKey) || set.startsWith(valueKey + ".") || set.startsWith(valueKey + ":");
    }
}
