package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.exchange.mapping.Target.OfLandmark;
import studio.stancebook.exchange.mapping.Target.OfPolyline;
import studio.stancebook.exchange.mapping.Target.OfTyre;
import studio.stancebook.exchange.mapping.Target.TyrePart;
import studio.stancebook.geometry.Point;

/** Reads the dimensions, tyres, landmarks and polylines of one row into a builder. */
final class DimensionCells {

    private final List<ColumnUse> uses;
    private final CellReader cells;
    private final Problems problems;
    private final DimensionSetBuilder builder;

    DimensionCells(List<ColumnUse> uses, CellReader cells, Problems problems, DimensionSetBuilder builder) {
        this.uses = uses;
        this.cells = cells;
        this.problems = problems;
        this.builder = builder;
    }

    void read() {
        for (ColumnUse use : uses) {
            if (use.target() instanceof Target.OfScalar scalar) {
                scalar(use, scalar);
            } else if (use.target() instanceof OfTyre tyre && tyre.what() != TyrePart.RIM) {
                tyre(use, tyre);
            } else if (use.target() instanceof OfLandmark landmark
                    && landmark.part().equals("x")) {
                landmark(use, landmark);
            } else if (use.target() instanceof OfPolyline line && line.number() == 1) {
                polyline(line.polyline());
            }
        }
    }

    private void scalar(ColumnUse use, Target.OfScalar scalar) {
        if (scalar.dimensions().contains(Dimension.WHEELBASE)) {
            return; // read on its own, since it may not be left out
        }
        cells.number(use).ifPresent(value -> scalar.dimensions().forEach(dimension -> builder.set(dimension, value)));
    }

    private void tyre(ColumnUse use, OfTyre tyre) {
        String size = cells.value(use);
        String columns = use.heading();
        if (tyre.what() == TyrePart.SIZE) {
            ColumnUse rimUse = other(OfTyre.class, rim -> rim.name().equals(tyre.name()) && rim.what() == TyrePart.RIM);
            String rim = cells.value(rimUse);
            columns += ", " + rimUse.heading();
            if (size.isEmpty() && !rim.isEmpty()) {
                problems.unreadable(columns, rim, "There is a rim but no size of the tyre.");
                return;
            }
            size = size.isEmpty() ? "" : TyreCells.joined(size, rim);
        }
        if (!size.isEmpty()) {
            TyreCells.read(columns, size, problems)
                    .ifPresent(designation -> tyre.axles().forEach(axle -> builder.tyre(axle, designation)));
        }
    }

    private void landmark(ColumnUse xUse, OfLandmark landmark) {
        ColumnUse zUse = other(
                OfLandmark.class,
                z -> z.landmark() == landmark.landmark() && z.part().equals("z"));
        int before = problems.count();
        OptionalDouble x = cells.number(xUse);
        OptionalDouble z = cells.number(zUse);
        if (x.isPresent() && z.isPresent()) {
            builder.set(landmark.landmark(), x.getAsDouble(), z.getAsDouble());
        } else if (x.isPresent() != z.isPresent() && problems.count() == before) {
            problems.unreadable(
                    xUse.heading() + ", " + zUse.heading(),
                    cells.value(x.isPresent() ? xUse : zUse),
                    "A landmark needs both x and z.");
        }
    }

    private void polyline(Polyline polyline) {
        Map<String, String> columns = new LinkedHashMap<>();
        List<Point> points = new ArrayList<>();
        for (ColumnUse use : parts(polyline)) {
            String text = cells.value(use);
            columns.put(use.heading(), text);
            Optional<List<Point>> read = PointCells.parse(text, use.unit());
            if (read.isEmpty()) {
                problems.unreadable(use.heading(), text, "Points are written x z; x z; with points for decimals.");
                return;
            }
            points.addAll(read.get());
        }
        if (points.isEmpty()) {
            return;
        }
        if (points.size() < polyline.fewestPoints() || points.size() > Polyline.MOST_POINTS) {
            problems.unreadable(
                    String.join(", ", columns.keySet()),
                    String.join("; ", columns.values()),
                    "It has " + points.size() + " points; " + polyline.fewestPoints() + " to " + Polyline.MOST_POINTS
                            + " are accepted.");
            return;
        }
        builder.set(polyline, points);
    }

    private List<ColumnUse> parts(Polyline polyline) {
        return uses.stream()
                .filter(use -> use.target() instanceof OfPolyline line && line.polyline() == polyline)
                .sorted(java.util.Comparator.comparingInt(use -> ((OfPolyline) use.target()).number()))
                .toList();
    }

    private <T extends Target> ColumnUse other(Class<T> kind, java.util.function.Predicate<T> wanted) {
        return uses.stream()
                .filter(use -> kind.isInstance(use.target()) && wanted.test(kind.cast(use.target())))
                .findFirst()
                .orElseThrow();
    }
}
