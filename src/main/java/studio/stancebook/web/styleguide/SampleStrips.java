package studio.stancebook.web.styleguide;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.strip.StripReading;
import studio.stancebook.drawing.strip.StripTick;
import studio.stancebook.drawing.strip.StripVerdict;
import studio.stancebook.quantity.Interval;

/** Band strips with every verdict and with classes of every size; all figures are invented. */
final class SampleStrips {

    private static final int LARGE_CLASS = 2000;

    private SampleStrips() {}

    /** One of each verdict, against a class of a usual size. */
    static List<BandStrip> ofEveryVerdict() {
        return List.of(
                strip(banded("rocker", "Rocker height from wheel centre", -0.06, 0.01)
                        .value(0.03, 0.006)
                        .earlier(List.of(0.07, 0.05))
                        .verdict(StripVerdict.OUTSIDE_HIGH, "0.02 above the band. To the edge: rocker 16 mm lower.")),
                strip(banded("dash", "Dash to axle in wheels", 0.74, 0.98)
                        .value(0.68, 0.01)
                        .verdict(StripVerdict.OUTSIDE_LOW, "0.06 below the band. To the edge: cowl 51 mm rearward.")),
                strip(banded("overhang", "Front overhang in wheels", 0.88, 1.07)
                        .value(1.07, 0.012)
                        .verdict(StripVerdict.TOO_CLOSE, "within the measuring uncertainty of the edge")),
                strip(banded("spanned", "Wheels spanned, both counted", 4.35, 4.68)
                        .value(4.44, 0.02)
                        .earlier(List.of(4.71, 4.62, 4.5))
                        .verdict(StripVerdict.INSIDE, "")),
                strip(banded("height", "Height in wheels", 2.24, 2.5)
                        .verdict(StripVerdict.NOT_MEASURABLE, "Needs the overall height")),
                strip(named("track", "Track / width", 0.82, 0.86).value(0.845, 0.003)),
                strip(banded("class", "Overall length in wheels", 5.3, 5.8).verdict(StripVerdict.CLASS, "")));
    }

    /** The same measure against a class of nobody, of one, of three and of 2,000. */
    static List<BandStrip> ofEverySize() {
        Random chance = new Random(4);
        double[] many = DoubleStream.generate(() -> 2.37 + 0.06 * chance.nextGaussian())
                .limit(LARGE_CLASS)
                .toArray();
        return List.of(
                strip(sized(0, "A class of nobody").value(2.36, 0.02)),
                strip(sized(1, "A class of one", 2.31)
                        .value(2.36, 0.02)
                        .verdict(StripVerdict.NO_BAND, "a band needs more benchmarks")),
                strip(sized(3, "A class of three", 2.31, 2.35, 2.44)
                        .band(2.3, Double.POSITIVE_INFINITY)
                        .value(2.36, 0.02)
                        .verdict(StripVerdict.INSIDE, "open above")),
                strip(sized(LARGE_CLASS, "A class of 2,000", many)
                        .band(2.25, 2.49)
                        .median(2.37)
                        .value(2.52, 0.02)
                        .verdict(StripVerdict.OUTSIDE_HIGH, "0.03 above the band")));
    }

    /** A measure in two assessments, as the parts of proposals want it; a verdict is null where there was no value. */
    record VerdictChange(
            String name,
            String from,
            String to,
            @Nullable String verdictFrom,
            @Nullable String verdictTo) {}

    static List<VerdictChange> changes() {
        return List.of(
                new VerdictChange("Rocker height from wheel centre", "0.05", "0.03", "outside-high", "outside-high"),
                new VerdictChange("Front overhang in wheels", "1.12", "1.07", "outside-high", "too-close"),
                new VerdictChange("Height in wheels", "\u2013", "2.36", null, "inside"));
    }

    private static StripReading.Builder sized(int n, String name, double... ticks) {
        return StripReading.of("sized-" + n, "height-in-wheels", name, 2, "").ticks(ticks);
    }

    /** Twelve benchmarks spread over the band, whose edges are uncertain by a tenth of its width. */
    private static StripReading.Builder banded(String id, String name, double lower, double upper) {
        double width = upper - lower;
        double[] ticks = IntStream.range(0, 12)
                .mapToDouble(i -> lower + width * (0.08 + 0.076 * i + 0.02 * Math.sin(3 * i)))
                .toArray();
        return StripReading.of("strip-" + id, id, name, 2, "")
                .ticks(ticks)
                .band(lower, upper)
                .edges(edge(lower, width), edge(upper, width))
                .median(lower + width / 2);
    }

    /** A class whose ticks lead to their benchmarks, without a band. */
    private static StripReading.Builder named(String id, String name, double lower, double upper) {
        List<StripTick> ticks = IntStream.range(0, 6)
                .mapToObj(i -> new StripTick(lower + (upper - lower) * i / 5, "Tern " + (i + 1), "/style-guide"))
                .toList();
        return StripReading.of("strip-" + id, id, name, 3, "").ticks(ticks).link("/style-guide");
    }

    private static Interval edge(double at, double width) {
        return new Interval(at - width / 10, at + width / 10);
    }

    private static BandStrip strip(StripReading.Builder reading) {
        return BandStrip.of(reading.build());
    }
}
