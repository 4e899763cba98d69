package studio.stancebook.paper;

import studio.stancebook.quantity.NumberText;

/** Writes a path as the path data of SVG, as short as absolute commands allow. */
public final class PathData {

    private final StringBuilder text = new StringBuilder();
    private final int decimals;
    private String x = "";
    private String y = "";

    private PathData(int decimals) {
        this.decimals = decimals;
    }

    /** The path data of a path, its numbers with at most so many decimals. */
    public static String of(Path path, int decimals) {
        PathData data = new PathData(decimals);
        path.steps().forEach(data::add);
        return data.text.toString();
    }

    private void add(Step step) {
        if (step instanceof Step.MoveTo move) {
            command('M').end(move.x(), move.y());
        } else if (step instanceof Step.LineTo line) {
            line(written(line.x()), written(line.y()));
        } else if (step instanceof Step.CurveTo curve) {
            command('C')
                    .number(curve.x1())
                    .number(curve.y1())
                    .number(curve.x2())
                    .number(curve.y2())
                    .end(curve.x(), curve.y());
        } else if (step instanceof Step.ArcTo arc) {
            command('A').number(arc.radius()).number(arc.radius());
            text.append(" 0 ").append(arc.large() ? '1' : '0').append(' ').append(arc.clockwise() ? '1' : '0');
            end(arc.x(), arc.y());
        } else {
            command('Z');
            x = "";
            y = "";
        }
    }

    private void line(String toX, String toY) {
        if (toY.equals(y)) {
            command('H').digits(toX);
        } else if (toX.equals(x)) {
            command('V').digits(toY);
        } else {
            command('L').digits(toX).digits(toY);
        }
        x = toX;
        y = toY;
    }

    private void end(double toX, double toY) {
        x = written(toX);
        y = written(toY);
        digits(x).digits(y);
    }

    private PathData command(char letter) {
        text.append(letter);
        return this;
    }

    private PathData number(double value) {
        return digits(written(value));
    }

    private PathData digits(String digits) {
        if (Character.isDigit(text.charAt(text.length() - 1)) && digits.charAt(0) != '-') {
            text.append(' ');
        }
        text.append(digits);
        return this;
    }

    private String written(double value) {
        return NumberText.plain(value, decimals);
    }
}
