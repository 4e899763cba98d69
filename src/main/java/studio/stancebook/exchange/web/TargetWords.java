package studio.stancebook.exchange.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.exchange.mapping.ColumnUnit;
import studio.stancebook.exchange.mapping.Target;
import studio.stancebook.exchange.mapping.Targets;

/** What a column can hold, in words, in groups for a selection. */
@Component
class TargetWords {

    private final MessageSource messages;

    TargetWords(MessageSource messages) {
        this.messages = messages;
    }

    /**
     * Targets of one kind.
     *
     * @param options words by the id of the target
     */
    record TargetGroup(String label, Map<String, String> options) {}

    /** All targets; further parts of a polyline are only what our own files have, so they are not offered. */
    List<TargetGroup> groups() {
        Map<String, Map<String, String>> groups = new LinkedHashMap<>();
        Targets.all().stream()
                .filter(target -> !(target instanceof Target.OfPolyline line) || line.number() == 1)
                .forEach(target -> groups.computeIfAbsent(group(target), key -> new LinkedHashMap<>())
                        .put(target.id(), words(target)));
        List<TargetGroup> all = new ArrayList<>();
        groups.forEach((key, options) -> all.add(new TargetGroup(word(key), options)));
        return all;
    }

    /** Words of the units by their keys, the empty one first. */
    Map<String, String> units() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("", word("exchange.unit.none"));
        for (ColumnUnit unit : ColumnUnit.values()) {
            if (!unit.key().isEmpty()) {
                words.put(unit.key(), word("exchange.unit." + unit.key()));
            }
        }
        return words;
    }

    private static String group(Target target) {
        if (target.field()) {
            return "exchange.group.field";
        }
        if (target instanceof Target.OfTyre) {
            return "exchange.group.tyre";
        }
        if (target instanceof Target.OfLandmark) {
            return "exchange.group.landmark";
        }
        return target instanceof Target.OfPolyline ? "exchange.group.polyline" : "exchange.group.dimension";
    }

    String words(Target target) {
        if (target instanceof Target.OfField field) {
            return word("exchange.field." + field.name());
        }
        if (target instanceof Target.OfTyre tyre) {
            return word("exchange.tyre." + tyre.name())
                    + (tyre.part().isEmpty() ? "" : ", " + word("exchange.part." + tyre.part()));
        }
        if (target instanceof Target.OfLandmark landmark) {
            return landmark.landmark().label() + ", " + landmark.part();
        }
        if (target instanceof Target.OfPolyline line) {
            return line.polyline().label() + (line.part().isEmpty() ? "" : ", " + line.part());
        }
        return scalar((Target.OfScalar) target);
    }

    private String scalar(Target.OfScalar scalar) {
        if (scalar.dimensions().size() > 1) {
            return word("exchange.both." + scalar.name());
        }
        Dimension dimension = scalar.dimensions().get(0);
        return dimension.label() + (dimension.code().isEmpty() ? "" : " (" + dimension.code() + ")");
    }

    private String word(String key) {
        return messages.getMessage(key, null, LocaleContextHolder.getLocale());
    }
}
