package studio.stancebook.underlay;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.tyre.TyreDesignation;

/**
 * What sheet is wanted.
 *
 * @param segment key of the segment; null when a proposal is drawn
 * @param proposal id of the proposal; null when a segment is drawn
 * @param tyre size on both axles; null when the wheelbase says how large it is, or the proposal itself
 * @param wheelbaseMm null when the tyre says how large it is, or the proposal itself
 * @param points by key of the measure, where in its band the sheet is drawn: 0 at the lower edge, 1 at the upper one; the
 *     median of the class where nothing is said
 * @param paper that it is printed on
 * @param denominator of the scale; null for the largest of these that fits
 * @param outline whether the proposal's own lines are laid over
 * @param title of the sheet; empty for the name of what is drawn
 */
public record UnderlayOrder(
        @Nullable String segment,
        @Nullable Long proposal,
        @Nullable TyreDesignation tyre,
        @Nullable Double wheelbaseMm,
        Map<String, Double> points,
        PaperSize paper,
        @Nullable Integer denominator,
        boolean outline,
        String title) {

    /**
     * The scales of a sheet, 1 to each. ISO 5455 recommends 1:1, 1:2, 1:5, 1:10 and 1:20; 1:4 and 1:8, of which scale models and
     * tape drawings are made, and 1:40 are common practice, no source.
     */
    public static final List<Integer> DENOMINATORS = List.of(1, 2, 4, 5, 8, 10, 20, 40);

    /** Most characters of a title. */
    public static final int MOST_TITLE = 80;

    public UnderlayOrder {
        points = Map.copyOf(points);
    }
}
