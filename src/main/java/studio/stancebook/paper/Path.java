package studio.stancebook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A line of straight and curved steps, mm, y downwards. */
public record Path(List<Step> steps) {

    /** Eighths of a circle: the curves leave it by less than 5 parts in a million of its radius. */
    private static final double MOST_ARC_RAD = Math.PI / 4;

    public Path {
        steps = List.copyOf(steps);
    }

    public static Path line(double x1, double y1, double x2, double y2) {
        return new Path(List.of(new Step.Move(x1, y1), new Step.Line(x2, y2)));
    }

    public static Path rectangle(double left, double top, double width, double height) {
        return new Path(List.of(
                new Step.Move(left, top),
                new Step.Line(left + width, top),
                new Step.Line(left + width, top + height),
                new Step.Line(left, top + height),
                new Step.Close()));
    }

    /** @param points at least two, each x and y */
    public static Path through(List<double[]> points, boolean closed) {
        List<Step> steps = new ArrayList<>();
        for (double[] point : points) {
            steps.add(steps.isEmpty() ? new Step.Move(point[0], point[1]) : new Step.Line(point[0], point[1]));
        }
        if (closed) {
            steps.add(new Step.Close());
        }
        return new Path(steps);
    }

    public static Path circle(double cx, double cy, double radius) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step.Move(cx + radius, cy));
        arc(steps, cx, cy, radius, 0, 2 * Math.PI);
        steps.add(new Step.Close());
        return new Path(steps);
    }

    /** Adds the curves of an arc that begins where the pen is; angles from the x axis towards y. */
    static void arc(List<Step> steps, double cx, double cy, double radius, double from, double sweep) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweep) / MOST_ARC_RAD - 1e-9));
        double part = sweep / pieces;
        double reach = 4.0 / 3 * Math.tan(part / 4) * radius;
        for (int i = 0; i < pieces; i++) {
            double a = from + i * part;
            double b = a + part;
            steps.add(new Step.Curve(
                    cx + radius * Math.cos(a) - reach * Math.sin(a),
                    cy + radius * Math.sin(a) + reach * Math.cos(a),
                    cx + radius * Math.cos(b) + reach * Math.sin(b),
                    cy + radius * Math.sin(b) - reach * Math.cos(b),
                    cx + radius * Math.cos(b),
                    cy + radius * Math.sin(b)));
        }
    }

    /**
     * The path that SVG path data describes.
     *
     * @param d the commands M, L, H, V, C, A (circles only) and Z in capitals, each written out
     * @throws IllegalArgumentException if there is another command
     */
    public static Path ofData(String d) {
        return new PathReader(d).path();
    }

    /** This path with every coordinate times {@code factor}, then shifted. */
    public Path placed(double factor, double dx, double dy) {
        return new Path(steps.stream().map(step -> step.placed(factor, dx, dy)).toList());
    }

    /** Both paths as one. */
    public Path and(Path other) {
        return new Path(Stream.concat(steps.stream(), other.steps.stream()).toList());
    }
}
