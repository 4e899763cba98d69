package studio.stancebook.proposal.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.classes.Pair;
import studio.stancebook.measure.Measure;
import studio.stancebook.proposal.chart.ScatterLabels.LabelPlace;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.ConcentrationEllipse;

/**
 * Two measures of a class against each other, as the page draws them. The frame is that of the class at hand, its ellipse and
 * its proposals; of other segments is seen what reaches into it.
 *
 * @param dots benchmarks that can be opened: all of a small class, those furthest out of a large one
 * @param density squares instead of the dots of a large class
 * @param shapes the ellipses of the segments that reach into the frame
 * @param packages how many benchmarks have both measures
 */
record Scatter(
        Axis x,
        Axis y,
        List<Dot> dots,
        List<Density.Level> density,
        List<Shape> shapes,
        List<ProposalPoint> marks,
        List<SegmentRow> lines,
        int packages) {

    /** Most dots that are drawn one by one. */
    static final int MOST_DOTS = 300;

    /** Most dots that are drawn over a density. */
    static final int MOST_OUTER = 60;

    private static final int EDGE_POINTS = 32;
    private static final double LEFT = 76;
    private static final double RIGHT = 980;
    private static final double TOP = 14;
    private static final double BOTTOM = 566;

    /** A benchmark. */
    record Dot(long packageId, String name, String cx, String cy, String x, String y) {}

    /** An ellipse with its name. */
    record Shape(String cls, String d, String name, LabelPlace at) {}

    /** A proposal with its name. */
    record ProposalPoint(ProposalMark of, String cls, String transform, String x, String y, LabelPlace at) {}

    /** A row of the table of segments. */
    record SegmentRow(
            String name,
            String key,
            int n,
            String meanX,
            String meanY,
            @Nullable String lack,
            String rangeX,
            String rangeY) {}

    static Scatter of(
            Measure measureX,
            Measure measureY,
            List<Pair> pairs,
            List<SegmentEllipse> ellipses,
            List<ProposalMark> proposals) {
        Axis x = Axis.around(
                least(pairs, ellipses, proposals, true), most(pairs, ellipses, proposals, true), LEFT, RIGHT, measureX);
        Axis y = Axis.around(
                least(pairs, ellipses, proposals, false),
                most(pairs, ellipses, proposals, false),
                BOTTOM,
                TOP,
                measureY);
        boolean many = pairs.size() > MOST_DOTS;
        List<Pair> drawn = many ? outermost(pairs, ellipses) : pairs;
        ScatterLabels labels = new ScatterLabels(LEFT + 4, TOP + 2, RIGHT - 4, BOTTOM - 2);
        drawn.forEach(pair -> labels.dot(x.at(pair.x()), y.at(pair.y())));
        proposals.forEach(mark -> labels.keepFree(x.at(mark.x()), y.at(mark.y()), 15));
        List<ProposalPoint> marks =
                proposals.stream().map(mark -> mark(mark, x, y, labels)).toList();
        return new Scatter(
                x,
                y,
                drawn.stream().map(pair -> dot(pair, x, y)).toList(),
                many ? Density.of(pairs, x, y) : List.of(),
                shapes(ellipses, x, y, labels),
                marks,
                ellipses.stream().map(one -> line(one, measureX, measureY)).toList(),
                pairs.size());
    }

    private static DoubleSummaryStatistics extent(
            List<Pair> pairs, List<SegmentEllipse> ellipses, List<ProposalMark> marks, boolean ofX) {
        DoubleSummaryStatistics all = new DoubleSummaryStatistics();
        pairs.forEach(pair -> all.accept(ofX ? pair.x() : pair.y()));
        marks.forEach(mark -> all.accept(ofX ? mark.x() : mark.y()));
        boolean alone = all.getCount() == 0;
        for (SegmentEllipse one : ellipses) {
            ConcentrationEllipse ellipse = one.ellipse();
            if (ellipse != null && (one.own() || alone)) {
                double mean = ofX ? one.moments().meanX() : one.moments().meanY();
                double half = ofX ? ellipse.halfWidth() : ellipse.halfHeight();
                all.accept(mean - half);
                all.accept(mean + half);
            }
        }
        return all;
    }

    private static double least(List<Pair> pairs, List<SegmentEllipse> all, List<ProposalMark> marks, boolean ofX) {
        return extent(pairs, all, marks, ofX).getMin();
    }

    private static double most(List<Pair> pairs, List<SegmentEllipse> all, List<ProposalMark> marks, boolean ofX) {
        return extent(pairs, all, marks, ofX).getMax();
    }

    /** Those furthest from the middle of their class, by Mahalanobis distance where there is one. */
    private static List<Pair> outermost(List<Pair> pairs, List<SegmentEllipse> ellipses) {
        SegmentEllipse own =
                ellipses.stream().filter(SegmentEllipse::own).findFirst().orElse(null);
        if (own == null || own.ellipse() == null) {
            return pairs.subList(0, MOST_OUTER);
        }
        return pairs.stream()
                .sorted(Comparator.comparingDouble((Pair pair) -> -own.moments().squaredDistance(pair.x(), pair.y())))
                .limit(MOST_OUTER)
                .toList();
    }

    private static Dot dot(Pair pair, Axis x, Axis y) {
        return new Dot(
                pair.packageId(),
                pair.name(),
                x.text(pair.x()),
                y.text(pair.y()),
                value(pair.x(), x.measure()),
                value(pair.y(), y.measure()));
    }

    private static List<Shape> shapes(List<SegmentEllipse> ellipses, Axis x, Axis y, ScatterLabels labels) {
        Map<SegmentEllipse, List<double[]>> edges = new LinkedHashMap<>();
        for (SegmentEllipse one : ellipses) {
            List<double[]> seen = one.ellipse() == null ? List.of() : edge(one.ellipse(), x, y);
            if (!seen.isEmpty()) {
                edges.put(one, seen);
            }
        }
        edges.values().forEach(labels::ellipse);
        List<Shape> shapes = new ArrayList<>();
        for (Map.Entry<SegmentEllipse, List<double[]>> entry : edges.entrySet()) {
            SegmentEllipse one = entry.getKey();
            if (one.ellipse() != null) {
                shapes.add(new Shape(
                        one.own() ? "scatter__ellipse scatter__ellipse--own" : "scatter__ellipse",
                        EllipsePath.of(one.ellipse(), x, y),
                        one.segment().name(),
                        labels.atEllipse(one.segment().name(), entry.getValue())));
            }
        }
        return shapes;
    }

    /** Points along the edge of an ellipse that are within the frame. */
    private static List<double[]> edge(ConcentrationEllipse ellipse, Axis x, Axis y) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < EDGE_POINTS; i++) {
            double angle = 2 * Math.PI * i / EDGE_POINTS;
            double[] point = {x.at(ellipse.xAt(angle)), y.at(ellipse.yAt(angle))};
            if (point[0] > LEFT && point[0] < RIGHT && point[1] > TOP && point[1] < BOTTOM) {
                points.add(point);
            }
        }
        return points;
    }

    private static ProposalPoint mark(ProposalMark mark, Axis x, Axis y, ScatterLabels labels) {
        double atX = x.at(mark.x());
        double atY = y.at(mark.y());
        return new ProposalPoint(
                mark,
                "scatter__mark scatter__mark--" + mark.verdict(),
                "translate(" + NumberText.plain(atX, 1) + " " + NumberText.plain(atY, 1) + ")",
                value(mark.x(), x.measure()),
                value(mark.y(), y.measure()),
                labels.atMark(mark.name(), atX, atY));
    }

    private static SegmentRow line(SegmentEllipse one, Measure x, Measure y) {
        ConcentrationEllipse ellipse = one.ellipse();
        boolean any = one.moments().n() > 0;
        return new SegmentRow(
                one.segment().name(),
                one.segment().key(),
                one.moments().n(),
                any ? value(one.moments().meanX(), x) : "",
                any ? value(one.moments().meanY(), y) : "",
                one.lack(),
                ellipse == null ? "" : range(one.moments().meanX(), ellipse.halfWidth(), x),
                ellipse == null ? "" : range(one.moments().meanY(), ellipse.halfHeight(), y));
    }

    private static String range(double middle, double half, Measure measure) {
        return value(middle - half, measure) + " – " + value(middle + half, measure);
    }

    private static String value(double value, Measure measure) {
        return NumberText.fixed(value, measure.decimals());
    }

    /** Lines from names that stand away to what they name; public because the page asks. */
    public List<String> leaders() {
        return Stream.concat(shapes.stream().map(Shape::at), marks.stream().map(ProposalPoint::at))
                .map(LabelPlace::leader)
                .filter(leader -> !leader.isEmpty())
                .toList();
    }

    /** Whether there is anything to draw; public because the page asks. */
    public boolean any() {
        return packages > 0 || !marks.isEmpty() || !shapes.isEmpty();
    }

    /** Whether the class is drawn as a density; public because the page asks. */
    public boolean dense() {
        return !density.isEmpty();
    }
}
