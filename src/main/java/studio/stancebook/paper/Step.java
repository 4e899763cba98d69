package studio.stancebook.paper;

/** One step of a path: where the pen goes next, mm, y downwards. */
public sealed interface Step {

    /** Lifted. */
    record MoveTo(double x, double y) implements Step {}

    /** In a straight line. */
    record LineTo(double x, double y) implements Step {}

    /** Along a cubic Bézier curve with two control points. */
    record CurveTo(double x1, double y1, double x2, double y2, double x, double y) implements Step {}

    /**
     * Along an arc of a circle.
     *
     * @param radius of the circle; where it is too small to reach the end, half the way there
     * @param large whether it is the longer of the two arcs
     * @param clockwise as seen on the paper
     */
    record ArcTo(double radius, boolean large, boolean clockwise, double x, double y) implements Step {}

    /** Back to where it last began. */
    record Close() implements Step {}

    /** This step with every coordinate times {@code factor}, then shifted. */
    default Step placed(double factor, double dx, double dy) {
        if (this instanceof MoveTo move) {
            return new MoveTo(move.x * factor + dx, move.y * factor + dy);
        }
        if (this instanceof LineTo line) {
            return new LineTo(line.x * factor + dx, line.y * factor + dy);
        }
        if (this instanceof CurveTo c) {
            return new CurveTo(
                    c.x1 * factor + dx,
                    c.y1 * factor + dy,
                    c.x2 * factor + dx,
                    c.y2 * factor + dy,
                    c.x * factor + dx,
                    c.y * factor + dy);
        }
        if (this instanceof ArcTo arc) {
            return new ArcTo(arc.radius * factor, arc.large, arc.clockwise, arc.x * factor + dx, arc.y * factor + dy);
        }
        return this;
    }
}
