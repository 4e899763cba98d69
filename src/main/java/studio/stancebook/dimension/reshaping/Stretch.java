package studio.stancebook.dimension.reshaping;

import java.util.ArrayList;
import java.util.List;

/**
 * A rising map of coordinates along one axis: straight between pairs of a place and where it goes, a shift beyond the
 * outermost two.
 */
final class Stretch {

    static final Stretch NONE = new Stretch(List.of());

    private record Knot(double from, double to) {}

    private final List<Knot> knots;

    private Stretch(List<Knot> knots) {
        this.knots = List.copyOf(knots);
    }

    /**
     * This map with a pair more, which lies beyond those that it has; one that would not rise is left out.
     *
     * @param from a place
     * @param to where it goes
     */
    Stretch with(double from, double to) {
        if (!knots.isEmpty()) {
            Knot last = knots.get(knots.size() - 1);
            if (from <= last.from || to <= last.to) {
                return this;
            }
        }
        List<Knot> more = new ArrayList<>(knots);
        more.add(new Knot(from, to));
        return new Stretch(more);
    }

    double of(double place) {
        if (knots.isEmpty()) {
            return place;
        }
        Knot first = knots.get(0);
        if (place <= first.from) {
            return place + first.to - first.from;
        }
        for (int i = 1; i < knots.size(); i++) {
            Knot before = knots.get(i - 1);
            Knot after = knots.get(i);
            if (place <= after.from) {
                double share = (place - before.from) / (after.from - before.from);
                return before.to + share * (after.to - before.to);
            }
        }
        Knot last = knots.get(knots.size() - 1);
        return place + last.to - last.from;
    }
}
