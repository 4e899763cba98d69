package studio.stancebook.drawing;

import studio.stancebook.geometry.Point;
import studio.stancebook.quantity.NumberText;

/** Writes SVG path data from points in mm with z upwards. */
final class PathData {

    private final StringBuilder text = new StringBuilder();
    private final int decimals;
    private final Placement placement;

    PathData() {
        this(1);
    }

    PathData(int decimals) {
        this(decimals, Placement.AS_RECORDED);
    }

    /** Writes every point where {@code placement} puts it. */
    PathData(int decimals, Placement placement) {
        this.decimals = decimals;
        this.placement = placement;
    }

    PathData moveTo(Point point) {
        return command('M').point(point);
    }

    PathData moveTo(double x, double z) {
        return moveTo(new Point(x, z));
    }

    PathData lineTo(Point point) {
        return command('L').point(point);
    }

    PathData lineTo(double x, double z) {
        return lineTo(new Point(x, z));
    }

    /** A line straight up or down to height {@code z}. */
    PathData upTo(double z) {
        return command('V').number(-placement.of(new Point(0, z)).z());
    }

    /** A level line to {@code x}. */
    PathData acrossTo(double x) {
        return command('H').number(placement.of(new Point(x, 0)).x());
    }

    PathData curveTo(Point first, Point second, Point end) {
        return command('C').point(first).point(second).point(end);
    }

    /** An arc of a circle, clockwise as seen on the sheet or against it. */
    PathData arcTo(double radius, boolean large, boolean clockwise, Point end) {
        double placed = radius * placement.factor();
        command('A').number(placed).number(placed);
        text.append(" 0 ").append(large ? '1' : '0').append(' ').append(clockwise ? '1' : '0');
        return point(end);
    }

    /** Closes the line; nothing where there is none. */
    PathData close() {
        return empty() ? this : command('Z');
    }

    PathData append(PathData other) {
        text.append(other.text);
        return this;
    }

    boolean empty() {
        return text.isEmpty();
    }

    private PathData command(char letter) {
        text.append(letter);
        return this;
    }

    private PathData point(Point point) {
        Point placed = placement.of(point);
        return number(placed.x()).number(-placed.z());
    }

    private PathData number(double value) {
        char last = text.isEmpty() ? ' ' : text.charAt(text.length() - 1);
        String digits = NumberText.plain(value, decimals);
        if (Character.isDigit(last) && digits.charAt(0) != '-') {
            text.append(' ');
        }
        text.append(digits);
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
