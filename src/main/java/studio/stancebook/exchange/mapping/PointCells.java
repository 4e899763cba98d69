package studio.stancebook.exchange.mapping;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import studio.stancebook.geometry.Point;

/** Points as text in a cell: {@code -850 560; -600 330}, x before z, a point for the decimals. */
public final class PointCells {

    private static final Pattern POINTS = Pattern.compile("\\s*;\\s*");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1,40})?");

    private PointCells() {}

    /** The points of a text; empty when it cannot be read. */
    static Optional<List<Point>> parse(String text, ColumnUnit unit) {
        List<Point> points = new ArrayList<>();
        for (String pair : POINTS.split(text.strip(), -1)) {
            String[] numbers = pair.strip().split("\\s+");
            if (pair.isBlank()) {
                continue;
            }
            if (numbers.length != 2 || !isNumber(numbers[0]) || !isNumber(numbers[1])) {
                return Optional.empty();
            }
            points.add(new Point(kept(numbers[0], unit), kept(numbers[1], unit)));
        }
        return Optional.of(points);
    }

    private static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches();
    }

    private static double kept(String number, ColumnUnit unit) {
        return unit.toKept(new BigDecimal(number));
    }

    /** The text of one point; parsed in mm it gives the same point. */
    public static String of(Point point) {
        return PlainNumber.of(point.x()) + " " + PlainNumber.of(point.z());
    }
}
