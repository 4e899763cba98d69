package studio.stancebook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.dimension.Scale;
import studio.stancebook.drawing.sideview.Alignment;
import studio.stancebook.drawing.sideview.Ghost;
import studio.stancebook.drawing.sideview.OverlayDrawing;
import studio.stancebook.drawing.sideview.SideView;

/**
 * Two to six laid over each other, as far as what is recorded of them allows; what had to be done otherwise than asked is in
 * the notes.
 *
 * @param drawing null where they can be drawn neither to one scale nor to one tyre
 * @param alignment that was done
 * @param inWheels whether they are drawn to one tyre diameter
 */
public record Comparison(@Nullable SideView drawing, Alignment alignment, boolean inWheels, List<MissingNote> notes) {

    /**
     * Why something was done otherwise.
     *
     * @param names of those that are the reason
     */
    public record MissingNote(MissingFor reason, String names) {}

    /** What something is missing for. */
    public enum MissingFor {
        NO_COWL,
        NO_H_POINT,
        SKETCH_IN_MM,
        NO_TYRE,
        NEITHER
    }

    public Comparison {
        notes = List.copyOf(notes);
    }

    /**
     * Lays them over each other.
     *
     * @param all 2 to 6, the reference first
     * @param wheels whether they are wanted to one tyre diameter
     */
    public static Comparison of(String title, List<Compared> all, Alignment wanted, boolean wheels) {
        List<MissingNote> notes = new ArrayList<>();
        Alignment alignment = possible(wanted, all, notes);
        String sketches = names(all, one -> one.dimensions().scale() == Scale.UNSCALED);
        String withoutTyre = names(all, one -> !hasTyres(one));
        if (!sketches.isEmpty() && !withoutTyre.isEmpty()) {
            notes.add(new MissingNote(MissingFor.NEITHER, sketches + "; " + withoutTyre));
            return new Comparison(null, alignment, wheels, notes);
        }
        boolean inWheels = wheels ? withoutTyre.isEmpty() : !sketches.isEmpty();
        if (inWheels != wheels) {
            notes.add(
                    wheels
                            ? new MissingNote(MissingFor.NO_TYRE, withoutTyre)
                            : new MissingNote(MissingFor.SKETCH_IN_MM, sketches));
        }
        List<Ghost> vehicles =
                all.stream().map(one -> new Ghost(one.name(), one.dimensions())).toList();
        return new Comparison(OverlayDrawing.of(title, vehicles, alignment, inWheels), alignment, inWheels, notes);
    }

    private static Alignment possible(Alignment wanted, List<Compared> all, List<MissingNote> notes) {
        String without = names(all, one -> !wanted.isIn(one.dimensions()));
        if (without.isEmpty()) {
            return wanted;
        }
        notes.add(new MissingNote(wanted == Alignment.COWL ? MissingFor.NO_COWL : MissingFor.NO_H_POINT, without));
        return Alignment.FRONT_WHEEL;
    }

    private static boolean hasTyres(Compared one) {
        return new Readings(one.dimensions()).find(Reading.WHEEL_DIAMETER).isPresent();
    }

    private static String names(List<Compared> all, Predicate<Compared> which) {
        return all.stream().filter(which).map(Compared::name).collect(Collectors.joining(", "));
    }
}
