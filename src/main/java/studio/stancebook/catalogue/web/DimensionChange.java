package studio.stancebook.catalogue.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.catalogue.internal.Soundness;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.reshaping.GivesWay;
import studio.stancebook.dimension.reshaping.Reshaping;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.Impossible;

/** One change of the dimensions in a form, with what follows it. Nothing is kept. */
@RestController
class DimensionChange {

    private final MessageSource messages;

    DimensionChange(MessageSource messages) {
        this.messages = messages;
    }

    /**
     * The inputs that change.
     *
     * @param fields the new text of each, by its name
     * @param said what follows, in words; empty where nothing does
     */
    record Changed(Map<String, String> fields, String said) {}

    /**
     * @param all the inputs of the form as they were before the change, and
     *     <ul>
     *       <li>{@code changed}: the JSON name of a dimension or of a landmark,
     *       <li>{@code to}: the new text of the dimension, or {@code x} and {@code z} of the landmark,
     *       <li>{@code givesWay}: the length that takes up a change of another one; the overall length where it is not named.
     *     </ul>
     * @throws Impossible where the form or the change cannot be read, or a value of the form is out of range
     */
    @PostMapping("/dimensions/change")
    @RequiresPermission(Permission.CONTRIBUTE)
    Changed change(@RequestParam Map<String, String> all) {
        DimensionForm form = DimensionForm.typed(all);
        DimensionSet before = form.read(Origin.DRAWING);
        Soundness.requireInRange(before);
        String key = all.getOrDefault("changed", "");
        DimensionSet after = Dimension.ofKey(key)
                .map(dimension -> changed(before, dimension, form, all))
                .or(() -> Landmark.ofKey(key).map(landmark -> Reshaping.with(before, landmark, point(form, all))))
                .orElseThrow(() -> Impossible.ofField("changed", "Name the dimension or the landmark that changes."));
        return new Changed(form.rewritten(before, after), said(key, before, after));
    }

    private static DimensionSet changed(
            DimensionSet before, Dimension dimension, DimensionForm form, Map<String, String> all) {
        OptionalDouble value = form.value(dimension, all.getOrDefault("to", ""));
        if (value.isEmpty() || !plausible(before, dimension, value.getAsDouble())) {
            throw Impossible.ofField("to", "Write a plausible value for " + dimension.label() + ".");
        }
        GivesWay givesWay = GivesWay.ofKey(all.getOrDefault("givesWay", "")).orElse(GivesWay.LENGTH);
        return Reshaping.with(before, dimension, value.getAsDouble(), givesWay);
    }

    /** Lengths of a sketch have no range of their own. */
    private static boolean plausible(DimensionSet before, Dimension dimension, double value) {
        boolean sketch = before.scale() == Scale.UNSCALED && dimension.unit() == Unit.MM;
        return sketch ? value > 0 : dimension.range().contains(value);
    }

    private static Point point(DimensionForm form, Map<String, String> all) {
        return new Point(coordinate(form, all, "x"), coordinate(form, all, "z"));
    }

    private static double coordinate(DimensionForm form, Map<String, String> all, String name) {
        return form.length(all.getOrDefault(name, ""))
                .orElseThrow(() -> Impossible.ofField(name, "Write " + name + " as a length such as 520 mm."));
    }

    private String said(String key, DimensionSet before, DimensionSet after) {
        List<String> follow = new ArrayList<>();
        for (Dimension dimension : Dimension.values()) {
            OptionalDouble now = after.scalar(dimension);
            if (!dimension.key().equals(key) && now.isPresent() && !now.equals(before.scalar(dimension))) {
                follow.add(dimension.label());
            }
        }
        if (!after.landmarks().equals(before.landmarks()) || !after.polylines().equals(before.polylines())) {
            follow.add(words("catalogue.change.body"));
        }
        return follow.isEmpty() ? "" : words("catalogue.change.follows", String.join(", ", follow));
    }

    private String words(String key, Object... places) {
        return messages.getMessage(key, places, LocaleContextHolder.getLocale());
    }
}
