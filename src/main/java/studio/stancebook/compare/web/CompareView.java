package studio.stancebook.compare.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.compare.Compared;
import studio.stancebook.compare.Comparison;
import studio.stancebook.compare.Pick;
import studio.stancebook.compare.Picks;
import studio.stancebook.drawing.sideview.OverlayDrawing;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.problem.FieldErrors;

/**
 * What the page shows.
 *
 * @param chosen those that are picked, the reference first
 * @param comparison null where there is none to show
 * @param differences the most unusual first
 * @param spreadOf the segment whose class the differences are held against; empty without a comparison
 */
record CompareView(
        List<Compared> chosen,
        @Nullable Comparison comparison,
        List<DifferenceRow> differences,
        String spreadOf,
        List<Picks.PickOption> choices,
        FieldErrors errors) {

    private static final int SHOWN_AT_ONCE = 30;

    /** The references to choose from, by pick. */
    public Map<String, String> references() {
        Map<String, String> names = new LinkedHashMap<>();
        chosen.forEach(one -> names.put(one.pick().key(), one.name()));
        return names;
    }

    public boolean nothing() {
        return chosen.isEmpty() && !errors.any();
    }

    /** Whether one more is all that is missing. */
    public boolean alone() {
        return chosen.size() == OverlayDrawing.LEAST - 1;
    }

    public boolean several() {
        return chosen.size() > 1;
    }

    public @Nullable SideView drawing() {
        return comparison == null ? null : comparison.drawing();
    }

    public List<Comparison.MissingNote> notes() {
        return comparison == null ? List.of() : comparison.notes();
    }

    /** Those that the reference is compared with. */
    public List<Compared> others() {
        return chosen.subList(1, chosen.size());
    }

    public List<DifferenceRow> first() {
        return differences.subList(0, Math.min(SHOWN_AT_ONCE, differences.size()));
    }

    public List<DifferenceRow> rest() {
        return differences.subList(first().size(), differences.size());
    }

    /** The address of the page of one. */
    public String page(Pick pick) {
        Integer revision = pick.revision();
        return (pick.proposal() ? "/proposals/" : "/packages/")
                + pick.id()
                + (revision == null ? "" : "?revision=" + revision);
    }
}
