package studio.stancebook.drawing;

import studio.stancebook.quantity.NumberText;

/**
 * A circle.
 *
 * @param cls its classes, the first of which names the pen
 * @param x centre, mm
 * @param y centre, mm, downwards
 * @param radius mm, not negative
 */
public record Disc(String cls, double x, double y, double radius) {

    public String cx() {
        return NumberText.plain(x, 1);
    }

    public String cy() {
        return NumberText.plain(y, 1);
    }

    public String r() {
        return NumberText.plain(radius, 1);
    }
}
