package studio.stancebook.paper;

import java.util.ArrayList;
import java.util.List;

/** Replaces the arcs of a path by cubic curves, for formats that have no arcs. */
final class ArcCurves {

    /** Eighths of a circle: the curves leave it by less than 5 parts in a million of its radius. */
    private static final double MOST_RAD = Math.PI / 4;

    private final List<Step> curved = new ArrayList<>();
    private double x;
    private double y;
    private double startX;
    private double startY;

    ArcCurves(Path path) {
        path.steps().forEach(this::add);
    }

    Path path() {
        return new Path(curved);
    }

    private void add(Step step) {
        if (step instanceof Step.ArcTo arc) {
            arc(arc);
        } else {
            curved.add(step);
        }
        if (step instanceof Step.MoveTo move) {
            startX = move.x();
            startY = move.y();
            at(move.x(), move.y());
        } else if (step instanceof Step.LineTo line) {
            at(line.x(), line.y());
        } else if (step instanceof Step.CurveTo curve) {
            at(curve.x(), curve.y());
        } else if (step instanceof Step.ArcTo arc) {
            at(arc.x(), arc.y());
        } else {
            at(startX, startY);
        }
    }

    private void at(double newX, double newY) {
        x = newX;
        y = newY;
    }

    /** From end points to a centre, as appendix B.2.4 of SVG 2 has it, for a circle. */
    private void arc(Step.ArcTo arc) {
        double halfX = (x - arc.x()) / 2;
        double halfY = (y - arc.y()) / 2;
        double half = Math.hypot(halfX, halfY);
        if (half == 0) {
            return;
        }
        double radius = Math.max(arc.radius(), half);
        double off = (arc.large() == arc.clockwise() ? -1 : 1) * Math.sqrt(radius * radius - half * half) / half;
        double cx = (x + arc.x()) / 2 + off * halfY;
        double cy = (y + arc.y()) / 2 - off * halfX;
        double from = Math.atan2(y - cy, x - cx);
        double sweep = Math.atan2(arc.y() - cy, arc.x() - cx) - from;
        if (arc.clockwise() && sweep < 0) {
            sweep += 2 * Math.PI;
        } else if (!arc.clockwise() && sweep > 0) {
            sweep -= 2 * Math.PI;
        }
        around(cx, cy, radius, from, sweep);
    }

    private void around(double cx, double cy, double radius, double from, double sweep) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweep) / MOST_RAD - 1e-9));
        double part = sweep / pieces;
        double reach = 4.0 / 3 * Math.tan(part / 4) * radius;
        for (int i = 0; i < pieces; i++) {
            double a = from + i * part;
            double b = a + part;
            curved.add(new Step.CurveTo(
                    cx + radius * Math.cos(a) - reach * Math.sin(a),
                    cy + radius * Math.sin(a) + reach * Math.cos(a),
                    cx + radius * Math.cos(b) + reach * Math.sin(b),
                    cy + radius * Math.sin(b) - reach * Math.cos(b),
                    cx + radius * Math.cos(b),
                    cy + radius * Math.sin(b)));
        }
    }
}
