package studio.stancebook.dimension.reshaping;

import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.Point;

/**
 * What values that follow are rounded to: whole mm and tenths of a degree, or a ten-thousandth of the wheelbase of an unscaled
 * sketch; points of lines to a tenth of that. Common practice, no source.
 */
final class Quantum {

    private static final double DEG = 0.1;

    private final double length;

    private Quantum(double length) {
        this.length = length;
    }

    static Quantum of(DimensionSet set) {
        double wheelbase = set.scalar(Dimension.WHEELBASE).orElseThrow();
        double sketch = Math.pow(10, Math.floor(Math.log10(wheelbase)) - 3);
        return new Quantum(set.scale() == Scale.UNSCALED ? sketch : 1);
    }

    double of(Dimension dimension, double value) {
        return dimension.unit() == Unit.MM ? rounded(value, length) : rounded(value, DEG);
    }

    Point ofLandmark(Point point) {
        return new Point(rounded(point.x(), length), rounded(point.z(), length));
    }

    Point ofLine(Point point) {
        return new Point(rounded(point.x(), length / 10), rounded(point.z(), length / 10));
    }

    private static double rounded(double value, double step) {
        double perUnit = Math.rint(1 / step);
        return step < 1 ? Math.rint(value * perUnit) / perUnit : Math.rint(value / step) * step;
    }
}
