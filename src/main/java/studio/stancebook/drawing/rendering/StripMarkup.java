package studio.stancebook.drawing.rendering;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.strip.StripWords;
import studio.stancebook.paper.PathData;
import studio.stancebook.quantity.NumberText;

/** Writes the picture of a band strip as an SVG element, which the style sheet of the page colours. */
final class StripMarkup {

    private static final String HEIGHT = Integer.toString(BandStrip.HEIGHT_PX);

    /** How much fainter the mark of a revision is than that of the one after it. */
    private static final double FADING = 0.65;

    private final BandStrip strip;
    private final Markup markup = new Markup();

    private StripMarkup(BandStrip strip) {
        this.strip = strip;
    }

    static String of(BandStrip strip) {
        return new StripMarkup(strip).figure();
    }

    private String figure() {
        markup.element("svg")
                .with("class", "band-strip__figure")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("height", HEIGHT)
                .with("role", strip.named() ? "group" : "img")
                .with("aria-label", strip.words().description())
                .holding();
        stretched();
        earlier();
        mark();
        beyond();
        edgeWords();
        return markup.close("svg").toString();
    }

    /** What is as wide as the strip is on the page. */
    private void stretched() {
        markup.element("svg")
                .with("class", "band-strip__stretch")
                .with("width", "100%")
                .with("height", HEIGHT)
                .with("viewBox", "0 0 1000 " + HEIGHT)
                .with("preserveAspectRatio", "none")
                .holding();
        path("axis", "M0 34H1000");
        bar("band", strip.band());
        strip.edges().forEach(edge -> bar("edge", edge));
        path("density", PathData.of(strip.density(), 1));
        path("rug", PathData.of(strip.rug(), 1));
        if (strip.median() != null) {
            path("median", "M" + place(strip.median()) + " 12V34");
        }
        level("tie", strip.tie(), " 34H");
        level("whisker", strip.whisker(), " 20H");
        strip.ticks().forEach(this::tick);
        markup.close("svg");
    }

    private void path(String part, String data) {
        if (!data.isEmpty()) {
            markup.element("path")
                    .with("class", "band-strip__" + part)
                    .with("d", data)
                    .empty();
        }
    }

    private void bar(String part, BandStrip.@Nullable Span span) {
        if (span != null) {
            markup.element("rect")
                    .with("class", "band-strip__" + part)
                    .with("y", "12")
                    .with("height", "22")
                    .with("x", place(span.x()))
                    .with("width", place(span.width()))
                    .empty();
        }
    }

    private void level(String part, BandStrip.@Nullable Span span, String across) {
        if (span != null) {
            path(part, "M" + place(span.x()) + across + place(span.end()));
        }
    }

    /** A tick with its name, which leads to the benchmark where there is an address. */
    private void tick(BandStrip.PlacedTick tick) {
        String data = "M" + place(tick.x()) + " 24V34";
        if (tick.href() == null) {
            markup.element("path")
                    .with("class", "band-strip__tick")
                    .with("d", data)
                    .holding();
            title(tick).close("path");
        } else {
            markup.element("a")
                    .with("class", "band-strip__tick")
                    .with("href", tick.href())
                    .holding();
            title(tick).element("path").with("d", data).empty().close("a");
        }
    }

    private Markup title(BandStrip.PlacedTick tick) {
        return markup.element("title").words("title", tick.words());
    }

    /** The older, the fainter. */
    private void earlier() {
        List<Double> places = strip.earlier();
        for (int i = 0; i < places.size(); i++) {
            markup.element("circle")
                    .with("class", "band-strip__earlier")
                    .with("fill", "none")
                    .with("opacity", NumberText.fixed(Math.pow(FADING, places.size() - 1 - i), 2))
                    .with("cy", "20")
                    .with("r", "3.5")
                    .with("cx", percent(places.get(i)))
                    .empty();
        }
    }

    private void mark() {
        markup.element("svg")
                .with("class", "band-strip__mark")
                .with("y", "20")
                .with("overflow", "visible")
                .with("width", "1")
                .with("height", "1")
                .with("x", percent(strip.mark()))
                .holding();
        path("shape", strip.markShape());
        path("hatch", strip.markHatch());
        markup.close("svg");
    }

    private void beyond() {
        if (strip.beyond().below() > 0) {
            word("0", "10", "start", beyond("below", strip.beyond().below()));
        }
        if (strip.beyond().above() > 0) {
            word("100%", "10", "end", beyond("above", strip.beyond().above()));
        }
    }

    private static String beyond(String side, int count) {
        return Phrases.of("drawing.strip.beyond." + side, Integer.toString(count));
    }

    private void edgeWords() {
        StripWords words = strip.words();
        word(percent(words.lowerAt()), "45", "end", words.lower());
        word(percent(words.upperAt()), "45", "start", words.upper());
    }

    private void word(String x, String y, String anchor, String text) {
        if (!text.isEmpty()) {
            markup.element("text")
                    .with("class", "band-strip__figure-word")
                    .with("text-anchor", anchor)
                    .with("x", x)
                    .with("y", y)
                    .words("text", text);
        }
    }

    private static String place(double x) {
        return NumberText.plain(x, 1);
    }

    /** Of the width of the strip on the page. */
    private static String percent(double x) {
        return NumberText.plain(x / BandStrip.WIDTH * 100, 2) + "%";
    }
}
