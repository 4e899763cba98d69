package studio.stancebook.proposal.chart;

import java.util.ArrayList;
import java.util.List;

/** Places names at ellipses and marks so that none lies on another as long as there is room. */
final class ScatterLabels {

    private static final double LETTER = 8.2;
    private static final double HEIGHT = 19;

    private final double left;
    private final double right;
    private final List<double[]> taken = new ArrayList<>();

    ScatterLabels(double left, double right) {
        this.left = left;
        this.right = right;
    }

    /** Where a name starts. */
    record Place(double x, double y) {}

    /** Keeps a mark free of names. */
    void keepFree(double x, double y, double around) {
        taken.add(new double[] {x - around, y - around, x + around, y + around});
    }

    /** The first of the places that is free for a name, else the one with the least overlap. */
    Place place(String name, List<Place> wanted) {
        double width = name.codePointCount(0, name.length()) * LETTER;
        Place best = wanted.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (Place place : wanted) {
            double[] box = box(inside(place, width), width);
            double overlap =
                    taken.stream().mapToDouble(other -> overlap(box, other)).sum();
            if (overlap < least) {
                least = overlap;
                best = inside(place, width);
            }
        }
        taken.add(box(best, width));
        return best;
    }

    private Place inside(Place place, double width) {
        return new Place(Math.max(left, Math.min(place.x(), right - width)), place.y());
    }

    private static double[] box(Place place, double width) {
        return new double[] {place.x(), place.y() - HEIGHT * 0.8, place.x() + width, place.y() + HEIGHT * 0.2};
    }

    private static double overlap(double[] a, double[] b) {
        double width = Math.min(a[2], b[2]) - Math.max(a[0], b[0]);
        double height = Math.min(a[3], b[3]) - Math.max(a[1], b[1]);
        return width > 0 && height > 0 ? width * height : 0;
    }
}
