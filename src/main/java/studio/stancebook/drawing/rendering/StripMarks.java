package studio.stancebook.drawing.rendering;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.strip.StripVerdict;
import studio.stancebook.paper.Ink;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.Path;

/** Puts a band strip on paper, without its words. */
public final class StripMarks {

    private static final String RED = "#b9232a";
    private static final String BAND = "#dcd8c9";
    private static final double HALF_BAR_MM = 1.5;
    private static final double TICK_MM = 1.6;
    private static final double MARK_MM = 1.9;

    private final BandStrip strip;
    private final double left;
    private final double middle;
    private final double width;
    private final List<Mark> marks = new ArrayList<>();

    private StripMarks(BandStrip strip, double leftMm, double middleMm, double widthMm) {
        this.strip = strip;
        this.left = leftMm;
        this.middle = middleMm;
        this.width = widthMm;
    }

    /**
     * The band, the class and the value, the line of values at {@code middleMm}.
     *
     * @param leftMm where the strip begins
     * @param middleMm height of the bar's middle, downwards
     * @param widthMm of the strip
     */
    public static List<Mark> of(BandStrip strip, double leftMm, double middleMm, double widthMm) {
        return new StripMarks(strip, leftMm, middleMm, widthMm).draw();
    }

    private List<Mark> draw() {
        BandStrip.Span band = strip.band();
        if (band != null) {
            bar(band, 1);
        }
        strip.edges().forEach(edge -> bar(edge, 0.6));
        line(left, middle + HALF_BAR_MM, left + width, middle + HALF_BAR_MM, Ink.line(Pen.SOFT, 0.12));
        classTicks();
        if (strip.median() != null) {
            double x = x(strip.median());
            line(x, middle - HALF_BAR_MM - 0.6, x, middle + HALF_BAR_MM, Ink.line(Pen.SOFT, 0.3));
        }
        boolean out = strip.reading().verdict() == StripVerdict.OUTSIDE_LOW
                || strip.reading().verdict() == StripVerdict.OUTSIDE_HIGH;
        String colour = out ? RED : Pen.TAPE;
        if (strip.tie() != null) {
            line(x(strip.tie().x()), middle, x(strip.tie().end()), middle, Ink.line(RED, 0.6));
        }
        if (strip.whisker() != null) {
            line(x(strip.whisker().x()), middle, x(strip.whisker().end()), middle, Ink.line(colour, 0.3));
        }
        strip.earlier().forEach(place -> diamond(place, 0.6, new Ink(Pen.SOFT, 0.15, List.of(), "#ffffff", 1)));
        if (strip.reading().value() != null) {
            boolean hollow = strip.reading().verdict() == StripVerdict.TOO_CLOSE;
            diamond(strip.mark(), 1, new Ink(colour, 0.3, List.of(), hollow ? "#ffffff" : colour, 1));
        }
        return marks;
    }

    private void bar(BandStrip.Span span, double opacity) {
        double from = x(span.x());
        Path bar = Path.rectangle(from, middle - HALF_BAR_MM, x(span.end()) - from, 2 * HALF_BAR_MM);
        marks.add(new Mark.Trace(bar, Ink.wash(BAND, opacity)));
    }

    /** Named ticks one by one, many as their profile. */
    private void classTicks() {
        double foot = middle + HALF_BAR_MM + TICK_MM;
        strip.ticks().forEach(tick -> line(x(tick.x()), foot - TICK_MM, x(tick.x()), foot, Ink.line(Pen.SOFT, 0.12)));
        profile(strip.density(), foot, Ink.wash(Pen.SOFT, 0.5));
        profile(strip.rug(), foot, Ink.line(Pen.SOFT, 0.12));
    }

    private void profile(Path path, double foot, Ink ink) {
        if (!path.empty()) {
            double factor = width / BandStrip.WIDTH;
            marks.add(new Mark.Trace(path.placed(factor, left, foot - BandStrip.AXIS_PX * factor), ink));
        }
    }

    private void diamond(double place, double share, Ink ink) {
        double x = x(place);
        double r = MARK_MM * share;
        marks.add(new Mark.Trace(
                Path.through(
                        List.of(
                                new double[] {x, middle - r},
                                new double[] {x + r, middle},
                                new double[] {x, middle + r},
                                new double[] {x - r, middle}),
                        true),
                ink));
    }

    private double x(double place) {
        return left + place / BandStrip.WIDTH * width;
    }

    private void line(double x1, double y1, double x2, double y2, Ink ink) {
        marks.add(new Mark.Trace(Path.line(x1, y1, x2, y2), ink));
    }
}
