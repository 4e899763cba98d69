package studio.stancebook.geometry;

import studio.stancebook.quantity.NumberText;

/**
 * A point of the side view.
 *
 * @param x rearward of the front wheel centre, mm, finite
 * @param z above the ground, mm, finite
 */
public record Point(double x, double z) {

    /** @throws IllegalArgumentException if a coordinate is NaN or infinite */
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(z)) {
            throw new IllegalArgumentException("A point needs two finite numbers; got " + x + " and " + z);
        }
        x += 0.0; // no negative zero, which equals would tell from zero
        z += 0.0;
    }

    /** Both coordinates to a tenth, such as {@code (520, 1160.5)}. */
    String text() {
        return "(" + NumberText.plain(x, 1) + ", " + NumberText.plain(z, 1) + ")";
    }
}
