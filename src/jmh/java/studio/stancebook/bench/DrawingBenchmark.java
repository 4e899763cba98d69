package studio.stancebook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
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
import org.springframework.context.support.ResourceBundleMessageSource;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import org.thymeleaf.templateresolver.StringTemplateResolver;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.rendering.DrawingDialect;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.sideview.SideViewOptions;
import studio.stancebook.drawing.strip.StripReading;
import studio.stancebook.drawing.strip.StripVerdict;

/** Drawings as pages get them: geometry, label placing and the template. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class DrawingBenchmark {

    private static final int MEASURES = 36;
    private static final int CLASS = 40;

    private final DimensionSet set = CoreBenchmark.complete();
    private final SpringTemplateEngine engine = engine();
    private final List<double[]> classes = classes();

    private static SpringTemplateEngine engine() {
        SpringTemplateEngine engine = new SpringTemplateEngine();
        ClassLoaderTemplateResolver files = new ClassLoaderTemplateResolver();
        files.setPrefix("templates/");
        files.setSuffix(".html");
        files.setCheckExistence(true);
        files.setOrder(1);
        StringTemplateResolver strings = new StringTemplateResolver();
        strings.setOrder(2);
        engine.addTemplateResolver(files);
        engine.addTemplateResolver(strings);
        engine.addDialect(new DrawingDialect());
        ResourceBundleMessageSource words = new ResourceBundleMessageSource();
        words.setBasename("messages/drawing");
        words.setDefaultEncoding("UTF-8");
        words.setFallbackToSystemLocale(false);
        engine.setTemplateEngineMessageSource(words);
        return engine;
    }

    /** Invented classes with a fixed seed. */
    private static List<double[]> classes() {
        SplittableRandom random = new SplittableRandom(4);
        List<double[]> classes = new ArrayList<>();
        for (int i = 0; i < MEASURES; i++) {
            classes.add(random.doubles(CLASS, 3.5, 4.5).toArray());
        }
        return classes;
    }

    /** Geometry alone: what is to be drawn on both sheets. */
    @Benchmark
    public SideView sideViewWithoutMarkup() {
        return SideView.of(set, SideViewOptions.of("side-view", "Tern"));
    }

    /** A side view as a page carries it. */
    @Benchmark
    public String sideView() {
        return fragment(
                "fragments/side-view :: side-view(${view})",
                "view",
                SideView.of(set, SideViewOptions.of("side-view", "Tern")));
    }

    /** The column of strips of a whole assessment, 36 measures on classes of 40. */
    @Benchmark
    public String columnOf36Strips() {
        List<BandStrip> strips = new ArrayList<>(MEASURES);
        for (int i = 0; i < MEASURES; i++) {
            StripReading.Builder reading = StripReading.of("strip-" + i, "measure-" + i, "Measure " + i, 2, "")
                    .verdict(StripVerdict.INSIDE, "")
                    .band(3.7, 4.3)
                    .ticks(classes.get(i))
                    .median(4)
                    .value(4.1, 0.02);
            strips.add(BandStrip.of(reading.build()));
        }
        return fragment("fragments/band-strip :: band-strips(${strips})", "strips", strips);
    }

    private String fragment(String fragment, String name, Object value) {
        return engine.process(
                "<th:block th:replace=\"~{" + fragment + "}\"></th:block>",
                new Context(Locale.ROOT, Map.of(name, value)));
    }
}
