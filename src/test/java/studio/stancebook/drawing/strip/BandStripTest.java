package studio.stancebook.drawing.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.rendering.Renderer;

class BandStripTest {

    private final Renderer renderer = new Renderer();

    private static StripReading.Builder reading() {
        return StripReading.of("rocker", "rocker-offset-in-wheels", "Rocker", 2, "")
                .band(10, 20)
                .median(15)
                .value(25, 0.5)
                .ticks(11, 12, 15, 18, 19);
    }

    @Test
    void everythingStandsOnOneLinearScale() {
        BandStrip strip =
                BandStrip.of(reading().verdict(StripVerdict.OUTSIDE_HIGH, "").build());

        double lower = strip.band().x();
        double upper = strip.band().end();
        double perUnit = (upper - lower) / 10;

        assertEquals(lower + 5 * perUnit, strip.median(), 0.2);
        assertEquals(lower + 15 * perUnit, strip.mark(), 0.2);
        assertEquals(lower + 14 * perUnit, strip.whisker().x(), 0.2);
        assertEquals(lower + 16 * perUnit, strip.whisker().end(), 0.2);
        assertEquals(upper, strip.tie().x(), 0.2);
    }

    @Test
    void figuresAtTheEdgesHaveRoomAtTheEnds() {
        BandStrip strip = BandStrip.of(reading().value(15, 0.1).build());

        assertTrue(strip.band().x() >= 169, "" + strip.band().x());
        assertTrue(strip.band().end() <= 831, "" + strip.band().end());
    }

    @Test
    void openBandReachesTheEndOfTheStrip() {
        BandStrip strip =
                BandStrip.of(reading().band(Double.NEGATIVE_INFINITY, 20).build());

        assertEquals(0, strip.band().x());
        assertEquals("", strip.words().lower());
        assertEquals("20.00", strip.words().upper());
    }

    @ParameterizedTest
    @EnumSource(StripVerdict.class)
    void everyVerdictIsSaidInWords(StripVerdict verdict) {
        String text = renderer.strip(BandStrip.of(reading().verdict(verdict, "").build()));
        Renderer.parsed(text);

        assertTrue(text.contains(">" + Phrases.of("drawing.verdict." + verdict.key()) + "</strong>"), text);
    }

    @Test
    void verdictsThatLookAlikeInGreyHaveMarksOfTheirOwn() {
        String inside = marks(StripVerdict.INSIDE);

        assertTrue(!marks(StripVerdict.OUTSIDE_HIGH).equals(inside));
        assertTrue(!marks(StripVerdict.TOO_CLOSE).equals(inside));
        assertTrue(!marks(StripVerdict.NOT_MEASURABLE).equals(inside));
    }

    private static String marks(StripVerdict verdict) {
        BandStrip strip = BandStrip.of(reading().verdict(verdict, "").build());
        return strip.markShape() + strip.markHatch() + strip.tie();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 150, 151, 2000})
    void classesOfAnySizeStayUnder30Kilobytes(int size) {
        SplittableRandom random = new SplittableRandom(7);
        List<StripTick> ticks = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            ticks.add(new StripTick(
                    10 + 10 * random.nextDouble(), "Benchmark number " + i, "/packages/" + (100_000 + i)));
        }
        BandStrip strip = BandStrip.of(
                reading().ticks(ticks).verdict(StripVerdict.INSIDE, "").build());
        String text = renderer.strip(strip);
        Renderer.parsed(text);

        assertTrue(text.getBytes(StandardCharsets.UTF_8).length < 30_000, "" + text.length());
        assertEquals(
                size + 5 > BandStrip.MOST_TICKS,
                strip.ticks().isEmpty() && !strip.density().empty());
    }

    @Test
    void farOffTicksAreCountedInsteadOfPressingTheRestTogether() {
        BandStrip strip = BandStrip.of(reading().ticks(1000, -1000, -2000).build());

        assertEquals(new BandStrip.Beyond(2, 1), strip.beyond());
        assertTrue(strip.band().width() > 200, "" + strip.band().width());
    }

    @Test
    void valueThatCannotBeMeasuredHasNoWhisker() {
        StripReading none = StripReading.of("a", "a", "A", 2, "")
                .verdict(StripVerdict.NOT_MEASURABLE, "")
                .build();

        BandStrip strip = BandStrip.of(none);
        Renderer.parsed(renderer.strip(strip));

        assertEquals(null, strip.whisker());
        assertEquals(null, strip.band());
    }

    @Test
    void namesTheTickOfEachBenchmark() {
        StripReading one = StripReading.of("a", "a", "A", 2, "")
                .ticks(List.of(new StripTick(1, "Dunlin <3>", "/packages/7")))
                .build();

        String text = renderer.strip(BandStrip.of(one));

        assertTrue(text.contains("<title>Dunlin &lt;3&gt; 1.00</title"), text);
        assertTrue(text.contains("href=\"/packages/7\""), text);
    }

    @Test
    void refusesNumbersThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> new StripTick(Double.NaN, null, null));
        assertThrows(
                IllegalArgumentException.class, () -> reading().value(1, -1).build());
        assertThrows(
                IllegalArgumentException.class,
                () -> reading().median(Double.NaN).build());
    }
}
