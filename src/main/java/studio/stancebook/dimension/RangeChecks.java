package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.FieldError;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/** Refuses values that no side view has; a typing error is the usual cause. Ranges: studio decisions 0004 and 0082. */
public final class RangeChecks {

    /** Plausible x of a point of a polyline of a side view, mm. */
    public static final Interval X_MM = new Interval(-3000, 9000);
    /** Plausible z of a point of a polyline of a side view, mm. */
    public static final Interval Z_MM = new Interval(-100, 4000);

    private RangeChecks() {}

    /**
     * What is out of range, by JSON name; lengths of an unscaled sketch need only be positive. Landmarks are plausible by the
     * wheelbase: under one that is wrong by itself nothing is said of them.
     */
    public static List<FieldError> problemsOf(DimensionSet set) {
        List<FieldError> problems = new ArrayList<>();
        boolean sketch = set.scale() == Scale.UNSCALED;
        set.scalars().forEach((dimension, value) -> {
            if (sketch && dimension.unit() == Unit.MM) {
                checkSketchLength(dimension, value, problems);
            } else {
                check(dimension.key(), value, dimension.range(), dimension.unit(), problems);
            }
        });
        if (set.scalar(Dimension.WHEELBASE).orElseThrow() > 0) {
            set.landmarks().forEach((landmark, point) -> checkLandmark(set, landmark, point, problems));
        }
        if (!sketch) {
            set.polylines().forEach((polyline, points) -> checkPoints(polyline, points, problems));
        }
        set.uncertainties().forEach((key, value) -> checkUncertainty(key, value, problems));
        checkLengthAgainstWheelbase(set, problems);
        return problems;
    }

    private static void checkSketchLength(Dimension dimension, double value, List<FieldError> problems) {
        if (value <= 0 && dimension != Dimension.DASH_TO_AXLE) {
            problems.add(
                    new FieldError(dimension.key(), dimension.label() + " must be above 0, not " + text(value) + "."));
        }
    }

    private static void check(String key, double value, Interval range, Unit unit, List<FieldError> problems) {
        if (!range.contains(value)) {
            problems.add(new FieldError(
                    key,
                    written(key, value, unit) + " is outside the plausible range " + written(key, range, unit) + "."));
        }
    }

    private static String written(String key, double value, Unit unit) {
        return unit == Unit.MM
                ? ShownUnits.text(value, 3)
                : (text(LeaningAngles.value(key, value)) + " " + unit.symbol()).strip();
    }

    private static String written(String key, Interval range, Unit unit) {
        if (unit == Unit.MM) {
            return ShownUnits.current().length().range(range, 3);
        }
        Interval read = LeaningAngles.range(key, range);
        return (text(read.lower()) + " to " + text(read.upper()) + " " + unit.symbol()).strip();
    }

    private static void checkLandmark(DimensionSet set, Landmark landmark, Point point, List<FieldError> problems) {
        checkCoordinate(set, landmark, "x", point.x(), landmark.xShares(), problems);
        checkCoordinate(set, landmark, "z", point.z(), landmark.zShares(), problems);
    }

    private static void checkCoordinate(
            DimensionSet set,
            Landmark landmark,
            String axis,
            double value,
            Interval shares,
            List<FieldError> problems) {
        double wheelbase = set.scalar(Dimension.WHEELBASE).orElseThrow();
        double least = shares.lower() * wheelbase;
        double most = shares.upper() * wheelbase;
        if (!(least <= value && value <= most)) {
            boolean sketch = set.scale() == Scale.UNSCALED;
            String range = sketch
                    ? text(least) + " to " + text(most)
                    : ShownUnits.current().length().range(new Interval(least, most), 3);
            problems.add(new FieldError(
                    landmark.key(),
                    landmark.label() + ", " + axis + ": " + (sketch ? text(value) : ShownUnits.text(value, 3))
                            + " is outside the plausible range " + range + ", which is " + text(shares.lower()) + " to "
                            + text(shares.upper()) + " of the wheelbase."));
        }
    }

    private static void checkPoint(String key, Point point, List<FieldError> problems) {
        check(key, point.x(), X_MM, Unit.MM, problems);
        check(key, point.z(), Z_MM, Unit.MM, problems);
    }

    private static void checkPoints(Polyline polyline, List<Point> points, List<FieldError> problems) {
        for (int i = 0; i < points.size(); i++) {
            checkPoint(polyline.key() + "[" + i + "]", points.get(i), problems);
        }
    }

    private static void checkUncertainty(String key, double value, List<FieldError> problems) {
        if (value < 0 || value > 500) {
            problems.add(new FieldError(
                    "uncertainties." + key, "A standard uncertainty is from 0 to 500, not " + text(value) + "."));
        }
    }

    private static void checkLengthAgainstWheelbase(DimensionSet set, List<FieldError> problems) {
        double wheelbase = set.scalar(Dimension.WHEELBASE).orElseThrow();
        set.scalar(Dimension.OVERALL_LENGTH).stream()
                .filter(length -> length <= wheelbase)
                .forEach(length -> problems.add(new FieldError(
                        Dimension.OVERALL_LENGTH.key(),
                        "The overall length, " + ShownUnits.text(length, 3) + ", must exceed the wheelbase, "
                                + ShownUnits.text(wheelbase, 3) + ".")));
    }

    private static String text(double value) {
        return NumberText.plain(value, 3);
    }
}
