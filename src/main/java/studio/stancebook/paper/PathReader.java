package studio.stancebook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads SVG path data as our drawings write it. */
final class PathReader {

    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|-?\\d+(?:\\.\\d+)?");

    private final Matcher tokens;
    private final List<Step> steps = new ArrayList<>();
    private double x;
    private double y;

    PathReader(String d) {
        this.tokens = TOKEN.matcher(d);
    }

    Path path() {
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
        return new Step.Move(x, y);
    }

    private void lined(double toX, double toY) {
        x = toX;
        y = toY;
        steps.add(new Step.Line(x, y));
    }

    private void curve() {
        double x1 = number();
        double y1 = number();
        double x2 = number();
        double y2 = number();
        x = number();
        y = number();
        steps.add(new Step.Curve(x1, y1, x2, y2, x, y));
    }

    /** From end points to a centre, as appendix B.2.4 of SVG 2 has it, for a circle. */
    private void arc() {
        double given = number();
        number();
        number();
        boolean large = number() != 0;
        boolean sweep = number() != 0;
        double endX = number();
        double endY = number();
        double halfX = (x - endX) / 2;
        double halfY = (y - endY) / 2;
        double half = Math.hypot(halfX, halfY);
        if (half > 0) {
            double radius = Math.max(given, half);
            double off = (large == sweep ? -1 : 1) * Math.sqrt(radius * radius - half * half) / half;
            around((x + endX) / 2 + off * halfY, (y + endY) / 2 - off * halfX, radius, sweep, endX, endY);
        }
        x = endX;
        y = endY;
    }

    private void around(double cx, double cy, double radius, boolean sweep, double endX, double endY) {
        double from = Math.atan2(y - cy, x - cx);
        double turn = Math.atan2(endY - cy, endX - cx) - from;
        if (sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        Path.arc(steps, cx, cy, radius, from, turn);
    }
}
