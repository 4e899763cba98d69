package studio.stancebook.proposal.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.Pair;
import studio.stancebook.measure.Measure;
import studio.stancebook.proposal.chart.ScatterLabels.Place;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.ConcentrationEllipse;

/**
 * Two measures of a class against each other, as the page draws them.
 *
 * @param dots benchmarks that can be opened: all of a small class, those furthest out of a large one
 * @param density squares instead of the dots of a large class
 * @param shapes the ellipses of all segments that have one
 * @param packages how many benchmarks have both measures
 */
record Scatter(
        Axis x,
        Axis y,
        List<Dot> dots,
        List<Density.Level> density,
        List<Shape> shapes,
        List<Mark> marks,
        List<Line> lines,
        int packages) {

    /** Most dots that are drawn one by one. */
    static final int MOST_DOTS = 300;

    /** Most dots that are drawn over a density. */
    static final int MOST_OUTER = 60;

    private static final double LEFT = 76;
    private static final double RIGHT = 980;
    private static final double TOP = 14;
    private static final double BOTTOM = 566;

    /** A benchmark. */
    record Dot(long packageId, String name, String cx, String cy, String x, String y) {}

    /** An ellipse with its name. */
    record Shape(String cls, String d, String name, String tx, String ty) {}

    /** A proposal with its name. */
    record Mark(ProposalMark of, String cls, String transform, String x, String y, String tx, String ty) {}

    /** A row of the table of segments. */
    record Line(
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
        ScatterLabels labels = new ScatterLabels(LEFT + 4, RIGHT - 4);
        proposals.forEach(mark -> labels.keepFree(x.at(mark.x()), y.at(mark.y()), 10));
        List<Mark> marks =
                proposals.stream().map(mark -> mark(mark, x, y, labels)).toList();
        return new Scatter(
                x,
                y,
                (many ? outermost(pairs, ellipses) : pairs)
                        .stream().map(pair -> dot(pair, x, y)).toList(),
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
        for (SegmentEllipse one : ellipses) {
            ConcentrationEllipse ellipse = one.ellipse();
            if (ellipse != null) {
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
        List<Shape> shapes = new ArrayList<>();
        for (SegmentEllipse one : ellipses) {
            ConcentrationEllipse ellipse = one.ellipse();
            if (ellipse != null) {
                Place at = labels.place(one.segment().name(), around(ellipse, x, y));
                shapes.add(new Shape(
                        one.own() ? "scatter__ellipse scatter__ellipse--own" : "scatter__ellipse",
                        EllipsePath.of(ellipse, x, y),
                        one.segment().name(),
                        NumberText.plain(at.x(), 1),
                        NumberText.plain(at.y(), 1)));
            }
        }
        return shapes;
    }

    /** Eight places on the edge of an ellipse, the top first. */
    private static List<Place> around(ConcentrationEllipse ellipse, Axis x, Axis y) {
        List<Place> places = new ArrayList<>();
        for (int eighth : new int[] {2, 1, 3, 0, 7, 4, 6, 5}) {
            double angle = eighth * Math.PI / 4;
            places.add(new Place(x.at(ellipse.xAt(angle)) + 3, y.at(ellipse.yAt(angle)) - 5));
        }
        return places;
    }

    private static Mark mark(ProposalMark mark, Axis x, Axis y, ScatterLabels labels) {
        double atX = x.at(mark.x());
        double atY = y.at(mark.y());
        double width = mark.name().length() * 8.2;
        Place name = labels.place(
                mark.name(),
                List.of(
                        new Place(atX + 13, atY + 5),
                        new Place(atX - 13 - width, atY + 5),
                        new Place(atX - width / 2, atY - 14),
                        new Place(atX - width / 2, atY + 26)));
        return new Mark(
                mark,
                "scatter__mark scatter__mark--" + mark.verdict(),
                "translate(" + NumberText.plain(atX, 1) + " " + NumberText.plain(atY, 1) + ")",
                value(mark.x(), x.measure()),
                value(mark.y(), y.measure()),
                NumberText.plain(name.x(), 1),
                NumberText.plain(name.y(), 1));
    }

    private static Line line(SegmentEllipse one, Measure x, Measure y) {
        ConcentrationEllipse ellipse = one.ellipse();
        boolean any = one.moments().n() > 0;
        return new Line(
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

    /** Whether there is anything to draw; public because the page asks. */
    public boolean any() {
        return packages > 0 || !marks.isEmpty() || !shapes.isEmpty();
    }

    /** Whether the class is drawn as a density; public because the page asks. */
    public boolean dense() {
        return !density.isEmpty();
    }
}
