package studio.stancebook.paper;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads SVG path data as our drawings write it: M, L, H, V, C, A (circles only) and Z in capitals, each written out. */
public final class PathReader {

    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|-?\\d+(?:\\.\\d+)?");

    private final Matcher tokens;
    private final List<Step> steps = new ArrayList<>();
    private double x;
    private double y;

    private PathReader(String d) {
        this.tokens = TOKEN.matcher(d);
    }

    /** The shape that {@code d} describes. */
    public static Path2D shape(String d) {
        Path2D shape = new Path2D.Double();
        for (Step step : curved(d).steps()) {
            if (step instanceof Step.MoveTo move) {
                shape.moveTo(move.x(), move.y());
            } else if (step instanceof Step.LineTo line) {
                shape.lineTo(line.x(), line.y());
            } else if (step instanceof Step.CurveTo c) {
                shape.curveTo(c.x1(), c.y1(), c.x2(), c.y2(), c.x(), c.y());
            } else {
                shape.closePath();
            }
        }
        return shape;
    }

    /** The path that {@code d} describes, its arcs as curves. */
    static Path curved(String d) {
        return of(d).curved();
    }

    static Path of(String d) {
        return new PathReader(d).path();
    }

    private Path path() {
        while (tokens.find()) {
            command(tokens.group());
        }
        return new Path(steps);
    }

    private void command(String name) {
        switch (name) {
            case "M" -> steps.add(moved(number(), number()));
            case "L" -> lined(number(), number());
            case "H" -> lined(number(), y);
            case "V" -> lined(x, number());
            case "C" -> curve();
            case "A" -> arc();
            case "Z" -> steps.add(new Step.Close());
            default -> throw new IllegalArgumentException("Path data has M, L, H, V, C, A and Z, not " + name);
        }
    }

    private double number() {
        if (!tokens.find()) {
            throw new IllegalArgumentException("Path data ends in the middle of a command");
        }
        return Double.parseDouble(tokens.group());
    }

    private Step moved(double toX, double toY) {
        x = toX;
        y = toY;
        return new Step.MoveTo(x, y);
    }

    private void lined(double toX, double toY) {
        x = toX;
        y = toY;
        steps.add(new Step.LineTo(x, y));
    }

    private void curve() {
        double x1 = number();
        double y1 = number();
        double x2 = number();
        double y2 = number();
        x = number();
        y = number();
        steps.add(new Step.CurveTo(x1, y1, x2, y2, x, y));
    }

    private void arc() {
        double radius = number();
        number();
        number();
        boolean large = number() != 0;
        boolean clockwise = number() != 0;
        x = number();
        y = number();
        steps.add(new Step.ArcTo(radius, large, clockwise, x, y));
    }
}
