package studio.stancebook.drawing.strip;

import java.util.DoubleSummaryStatistics;
import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.Interval;

/**
 * Where values stand on a strip 1000 wide. The strip shows the band, the proposal with its whisker and the class; ticks
 * that lie more than that range away from it would press the rest together and are counted at its ends instead. The edges
 * of the band stay clear of the ends by a sixth of the strip, so that their figures have room.
 */
record StripScale(double from, double to) {

    private static final double EDGE_MARGIN = 0.17;
    private static final double END_MARGIN = 0.03;

    static StripScale of(StripReading reading) {
        DoubleSummaryStatistics core = core(reading);
        if (core.getCount() == 0) {
            return new StripScale(0, 1);
        }
        double spread = core.getMax() - core.getMin();
        double reach = spread > 0 ? spread : Math.max(Math.abs(core.getMax()) * 0.1, 1e-6);
        double least = core.getMin();
        double most = core.getMax();
        for (StripTick tick : reading.ticks()) {
            boolean near = tick.value() >= core.getMin() - reach && tick.value() <= core.getMax() + reach;
            least = near ? Math.min(least, tick.value()) : least;
            most = near ? Math.max(most, tick.value()) : most;
        }
        return padded(least, most, reach, reading);
    }

    /** What must be seen: band, edges, median, proposal; without any of them the middle 80 % of the class. */
    private static DoubleSummaryStatistics core(StripReading reading) {
        DoubleSummaryStatistics core = new DoubleSummaryStatistics();
        add(core, reading.lower(), 0);
        add(core, reading.upper(), 0);
        add(core, reading.median(), 0);
        add(core, reading.value(), 2.2 * reading.uncertainty());
        addInterval(core, reading.lowerEdge());
        addInterval(core, reading.upperEdge());
        double[] sorted =
                reading.ticks().stream().mapToDouble(StripTick::value).sorted().toArray();
        if (sorted.length > 0 && reading.lower() == null && reading.upper() == null) {
            core.accept(sorted[sorted.length / 10]);
            core.accept(sorted[sorted.length - 1 - sorted.length / 10]);
        }
        return core;
    }

    private static void add(DoubleSummaryStatistics core, @Nullable Double value, double either) {
        if (value != null) {
            core.accept(value - either);
            core.accept(value + either);
        }
    }

    private static void addInterval(DoubleSummaryStatistics core, @Nullable Interval interval) {
        if (interval != null && Double.isFinite(interval.width())) {
            core.accept(interval.lower());
            core.accept(interval.upper());
        }
    }

    private static StripScale padded(double least, double most, double reach, StripReading reading) {
        double width = Math.max(most - least, reach * 1e-3);
        double from = least - END_MARGIN * width;
        double to = most + END_MARGIN * width;
        Double lower = reading.lower();
        Double upper = reading.upper();
        for (int i = 0; i < 3; i++) {
            if (lower != null) {
                from = Math.min(from, lower - EDGE_MARGIN / (1 - EDGE_MARGIN) * (to - lower));
            }
            if (upper != null) {
                to = Math.max(to, upper + EDGE_MARGIN / (1 - EDGE_MARGIN) * (upper - from));
            }
        }
        return new StripScale(from, to > from ? to : from + 1);
    }

    /** From 0 to 1000; values beyond the strip stand at its ends. */
    double at(double value) {
        double x = (value - from) / (to - from) * BandStrip.WIDTH;
        return Math.max(0, Math.min(BandStrip.WIDTH, x));
    }

    boolean shows(double value) {
        return value >= from && value <= to;
    }
}
