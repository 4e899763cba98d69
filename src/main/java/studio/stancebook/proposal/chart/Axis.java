package studio.stancebook.proposal.chart;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.measure.Measure;
import studio.stancebook.quantity.NumberText;

/**
 * One axis of a chart.
 *
 * @param from the value at its start, below {@code to}
 * @param start where it starts in the chart
 * @param end where it ends
 */
record Axis(double from, double to, double start, double end, Measure measure) {

    private static final int WANTED_TICKS = 6;
    private static final double MARGIN = 0.05;

    /**
     * A round value on an axis.
     *
     * @param at where it is in the chart
     * @param share how far along the axis, in percent
     */
    record AxisTick(String at, String share, String words) {}

    /** An axis that values fit on, with a margin; around the one value that there is, or around 1. */
    static Axis around(double least, double most, double start, double end, Measure measure) {
        double from = Double.isFinite(least) ? least : 0;
        double to = Double.isFinite(most) ? most : 2;
        double margin = to > from ? (to - from) * MARGIN : Math.max(Math.abs(from) * MARGIN, 0.5);
        return new Axis(from - margin, to + margin, start, end, measure);
    }

    double at(double value) {
        return start + (value - from) / (to - from) * (end - start);
    }

    /** As text for an attribute. */
    String text(double value) {
        return NumberText.plain(at(value), 1);
    }

    /** Round values in steps of 1, 2 or 5 of a power of ten; public because the page asks. */
    public List<AxisTick> ticks() {
        double step = step();
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
        List<AxisTick> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step); i * step <= to; i++) {
            ticks.add(new AxisTick(
                    text(i * step),
                    NumberText.plain((i * step - from) / (to - from) * 100, 2),
                    NumberText.fixed(i * step, decimals)));
        }
        return ticks;
    }

    private double step() {
        double rough = (to - from) / WANTED_TICKS;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }

    /** What it measures, with the unit; public because the page asks. */
    public String words() {
        String unit = measure.unit().symbol();
        return unit.isEmpty() ? measure.name() : measure.name() + ", " + unit;
    }
}
