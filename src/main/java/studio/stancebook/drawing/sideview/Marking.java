package studio.stancebook.drawing.sideview;

import java.util.Set;

/**
 * Which parts are marked.
 *
 * @param outside drawn in red tape
 * @param tooClose drawn hatched
 */
record Marking(Set<Part> outside, Set<Part> tooClose) {

    static Marking of(SideViewOptions options) {
        return new Marking(Part.of(options.outside()), Part.of(options.tooClose()));
    }

    /** The classes of a pen for a part. */
    String pen(String pen, Part part) {
        if (outside.contains(part)) {
            return pen + " out";
        }
        return tooClose.contains(part) ? pen + " unsure" : pen;
    }

    boolean marked(Part part) {
        return outside.contains(part) || tooClose.contains(part);
    }
}
