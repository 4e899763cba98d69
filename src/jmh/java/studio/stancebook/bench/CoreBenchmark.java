package studio.stancebook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;
import studio.stancebook.geometry.TyreArc;
import studio.stancebook.geometry.UnderbodyAngles;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Subject;
import studio.stancebook.tyre.TyreDesignation;

/** One assessment's values with uncertainty, and the underbody angles of a long polyline. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CoreBenchmark {

    private final DimensionSet set = complete();
    private final List<Point> longUnderbody = underbody(2000);

    static DimensionSet complete() {
        DimensionSetBuilder set = DimensionSet.builder()
                .tyres(TyreDesignation.parse("265/70R17"))
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.OVERALL_LENGTH, 4700)
                .set(Dimension.FRONT_OVERHANG, 900)
                .set(Dimension.REAR_OVERHANG, 1000)
                .set(Dimension.OVERALL_WIDTH, 1880)
                .set(Dimension.OVERALL_HEIGHT, 1750)
                .set(Dimension.FRONT_TRACK, 1600)
                .set(Dimension.REAR_TRACK, 1620)
                .set(Dimension.GROUND_CLEARANCE, 210)
                .set(Dimension.SEAT_HEIGHT, 700)
                .set(Polyline.UNDERBODY, underbody(12))
                .set(
                        Polyline.OUTLINE,
                        List.of(
                                new Point(-900, 480),
                                new Point(-880, 800),
                                new Point(500, 1100),
                                new Point(1100, 1700),
                                new Point(1500, 1750),
                                new Point(3300, 1650),
                                new Point(3600, 1150),
                                new Point(3800, 900),
                                new Point(3800, 520)))
                .set(
                        Polyline.DAYLIGHT_OPENING,
                        List.of(
                                new Point(800, 1090),
                                new Point(1150, 1600),
                                new Point(3150, 1560),
                                new Point(3100, 1160)));
        double[] places = {
            500, 1100, 1100, 1700, 1400, 1750, 3300, 1650, 3600, 1150, 3750, 1000, 700, 1080, 3100, 1160, 500, 320, 2300,
            340, 0, 900, 2800, 900, 1500, 700, 480, 320, 2450, 340, -700, 900, -380, 350, 420, 350, 2380, 360, 3200, 360
        };
        for (Landmark landmark : Landmark.values()) {
            set.set(landmark, places[2 * landmark.ordinal()], places[2 * landmark.ordinal() + 1]);
        }
        return set.build();
    }

    /** A bumpy underbody that rises towards both ends. */
    private static List<Point> underbody(int points) {
        List<Point> line = new ArrayList<>(points);
        for (int i = 0; i < points; i++) {
            double share = i / (points - 1.0);
            double x = -900 + share * 4700;
            double rise = Math.pow(2 * share - 1, 4) * 260;
            line.add(new Point(x, 230 + rise + 12 * Math.sin(i * 0.7)));
        }
        return line;
    }

    /** Every measure with its uncertainty, from the dimension set. Goal: under 20 microseconds. */
    @Benchmark
    public Map<Measure, MeasureValue> assessmentOfAllMeasures() {
        return MeasureRegistry.builtIn().valuesOf(new Subject(set));
    }

    /** Approach, departure and ramp for 2,000 points. Goal: under 100 microseconds. */
    @Benchmark
    public UnderbodyAngles underbodyAnglesOf2000Points() {
        return UnderbodyAngles.of(
                2800, TyreArc.onGround(0, 380), TyreArc.onGround(2800, 380), longUnderbody);
    }
}
