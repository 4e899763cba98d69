package studio.stancebook.dimension;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import studio.stancebook.dimension.Disagreement.UnitAmounts;
import studio.stancebook.geometry.Point;

/** The outline against overall length, front overhang and height. Each of its two ends is as uncertain as the line. */
final class OutlineChecks {

    private final DimensionSet set;
    private final Readings readings;
    private final double own;

    private OutlineChecks(DimensionSet set, Readings readings) {
        this.set = set;
        this.readings = readings;
        this.own = set.uncertaintyOf(Polyline.OUTLINE.key(), Unit.MM);
    }

    static List<Disagreement> of(DimensionSet set, Readings readings) {
        List<Point> outline = set.points(Polyline.OUTLINE);
        if (outline.isEmpty()) {
            return List.of();
        }
        OutlineChecks checks = new OutlineChecks(set, readings);
        DoubleSummaryStatistics x = outline.stream().mapToDouble(Point::x).summaryStatistics();
        double top = outline.stream().mapToDouble(Point::z).max().orElseThrow();
        return Stream.of(
                        checks.compared(Reading.OVERALL_LENGTH, x.getMax() - x.getMin(), Math.sqrt(2)),
                        checks.compared(Reading.FRONT_OVERHANG, -x.getMin(), 1),
                        checks.compared(Reading.OVERALL_HEIGHT, top, 1))
                .flatMap(List::stream)
                .toList();
    }

    /** @param ends by how much more the extent is uncertain than one end of it */
    private List<Disagreement> compared(Reading reading, double extent, double ends) {
        Estimate recorded = readings.find(reading).orElse(null);
        if (recorded == null) {
            return List.of();
        }
        double joint = Math.hypot(recorded.uncertainty(set::standardUncertainty), ends * own);
        double allowed = ClosingChecks.allowed(joint, set, Unit.MM);
        return Math.abs(recorded.value() - extent) <= allowed
                ? List.of()
                : List.of(Disagreement.notClosing(
                        List.of(reading.key(), Polyline.OUTLINE.key()),
                        reading.label(),
                        recorded.value(),
                        extent,
                        allowed,
                        UnitAmounts.of(Unit.MM, set.scale())));
    }
}
