package studio.stancebook.geometry;

/**
 * The straight line through two points, without end.
 *
 * @param from a point
 * @param to another point; the line has the direction from the first to the second
 */
public record Line(Point from, Point to) {

    /** @throws DegenerateShape if the two points are the same */
    public Line {
        if (from.x() == to.x() && from.z() == to.z()) {
            throw new DegenerateShape("A line needs two different points; both are " + from.text() + ".");
        }
    }

    /**
     * The height of the line above the ground at {@code x}, between the points or beyond them, mm. At the front wheel
     * centre ({@code x = 0}) it is the aim of a windscreen.
     *
     * @throws DegenerateShape if the line is upright, so that it has no one height
     */
    public double heightAt(double x) {
        if (upright()) {
            throw new DegenerateShape(
                    "The line from " + from.text() + " to " + to.text() + " is upright: it has no one height.");
        }
        return from.z() + (x - from.x()) * (to.z() - from.z()) / (to.x() - from.x());
    }

    /**
     * The angle from the horizontal, rearward direction up to the direction of the line, degrees in (-180, 180]: 0 for a
     * line that runs level rearward, 90 straight up, over 90 when it leans forward as it rises, negative when it falls.
     */
    public double inclinationDeg() {
        return Math.toDegrees(Math.atan2(to.z() - from.z(), to.x() - from.x()));
    }

    /** True when both points have the same x. */
    public boolean upright() {
        return from.x() == to.x();
    }
}
