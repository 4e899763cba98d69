package studio.stancebook.drawing.sideview;

import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;

/**
 * A tyre as drawn, mm.
 *
 * @param x of the wheel centre
 * @param centreHeight above the ground
 * @param radius free radius; more than {@code centreHeight} on a loaded tyre
 * @param rimRadius null when not recorded
 */
record DrawnTyre(
        double x,
        double centreHeight,
        double radius,
        @Nullable Double rimRadius) {

    Point centre() {
        return new Point(x, centreHeight);
    }

    double top() {
        return centreHeight + radius;
    }

    /** Half the length of the flattened contact on the ground; 0 for an unloaded tyre. */
    double halfContact() {
        return radius > centreHeight ? Math.sqrt(radius * radius - centreHeight * centreHeight) : 0;
    }
}
