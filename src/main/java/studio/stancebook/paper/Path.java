package studio.stancebook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A line of straight and curved steps, mm, y downwards. */
public record Path(List<Step> steps) {

    public Path {
        steps = List.copyOf(steps);
    }

    public static Path line(double x1, double y1, double x2, double y2) {
        return new Path(List.of(new Step.MoveTo(x1, y1), new Step.LineTo(x2, y2)));
    }

    public static Path rectangle(double left, double top, double width, double height) {
        return new Path(List.of(
                new Step.MoveTo(left, top),
                new Step.LineTo(left + width, top),
                new Step.LineTo(left + width, top + height),
                new Step.LineTo(left, top + height),
                new Step.Close()));
    }

    /** @param points at least two, each x and y */
    public static Path through(List<double[]> points, boolean closed) {
        List<Step> steps = new ArrayList<>();
        for (double[] point : points) {
            steps.add(steps.isEmpty() ? new Step.MoveTo(point[0], point[1]) : new Step.LineTo(point[0], point[1]));
        }
        if (closed) {
            steps.add(new Step.Close());
        }
        return new Path(steps);
    }

    public static Path circle(double cx, double cy, double radius) {
        return new Path(List.of(
                new Step.MoveTo(cx + radius, cy),
                new Step.ArcTo(radius, false, true, cx - radius, cy),
                new Step.ArcTo(radius, false, true, cx + radius, cy),
                new Step.Close()));
    }

    public boolean empty() {
        return steps.isEmpty();
    }

    /** This path without arcs, each replaced by curves. */
    Path curved() {
        return new ArcCurves(this).path();
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
