package studio.stancebook.compare.web;

import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.compare.Pick;
import studio.stancebook.drawing.sideview.Alignment;
import studio.stancebook.problem.Malformed;

/**
 * The state of the page, which is all in its address.
 *
 * @param of the picks; some of them several in one parameter, with commas between
 * @param reference the pick that the others are held against; the first without
 * @param at where they are laid over; the front wheel without
 * @param scale {@code mm} or {@code wheels}
 * @param q part of the name of what else to pick
 */
record CompareForm(
        @Nullable List<String> of,
        @Nullable String reference,
        @Nullable String at,
        @Nullable String scale,
        @Nullable String q) {

    /** The picks, each once, the reference first. */
    List<Pick> picks() {
        LinkedHashSet<Pick> picks = new LinkedHashSet<>();
        List<Pick> given = (of == null ? List.<String>of() : of)
                .stream()
                        .filter(name -> !name.isBlank())
                        .map(name -> Pick.of(name.strip()))
                        .toList();
        if (reference != null && !reference.isBlank()) {
            Pick first = Pick.of(reference);
            if (given.contains(first)) {
                picks.add(first);
            }
        }
        picks.addAll(given);
        return List.copyOf(picks);
    }

    Alignment alignment() {
        String key = at == null || at.isBlank() ? Alignment.FRONT_WHEEL.key() : at;
        return Alignment.of(key)
                .orElseThrow(() -> Malformed.ofField(
                        "at", "Laid over at front-wheel, rear-wheel, cowl or h-point, not at \"" + key + "\"."));
    }

    boolean wheels() {
        String unit = scale == null || scale.isBlank() ? "mm" : scale;
        if (!unit.equals("mm") && !unit.equals("wheels")) {
            throw Malformed.ofField("scale", "Drawn in mm or in wheels, not in \"" + unit + "\".");
        }
        return unit.equals("wheels");
    }

    String words() {
        return q == null ? "" : q.replaceAll("\\p{Cntrl}+", " ").strip();
    }
}
