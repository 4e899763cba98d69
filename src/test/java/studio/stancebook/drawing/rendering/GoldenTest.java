package studio.stancebook.drawing.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.drawing.sideview.Ghost;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.sideview.SideViewOptions;
import studio.stancebook.drawing.sideview.Sketches;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.strip.StripReading;
import studio.stancebook.drawing.strip.StripTick;
import studio.stancebook.drawing.strip.StripVerdict;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.ShownUnits;

/**
 * Whole drawings, compared with files that were looked at when they were written, under several locales. {@code mvn test
 * -Dstancebook.write-golden=true -Dtest=GoldenTest} writes them anew: look at them before they are committed.
 */
class GoldenTest {

    private static final Path FOLDER = Path.of("src/test/resources/golden");

    private static void assertGolden(String name, String tag, Supplier<String> drawing) throws IOException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            String text = drawing.get() + "\n";
            if (Boolean.getBoolean("stancebook.write-golden")) {
                Files.createDirectories(FOLDER);
                Files.writeString(FOLDER.resolve(name), text);
            }
            assertEquals(Files.readString(FOLDER.resolve(name)), text);
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE", "ar-EG", "hi-IN-u-nu-deva", "tr-TR"})
    void sideViewAsAFile(String tag) throws IOException {
        SideViewOptions options = SideViewOptions.of("tern", "Tern, revision 4")
                .withOutside(Set.of("rocker-offset-in-wheels", "screen-aim-in-wheels"))
                .withTooClose(Set.of("front-overhang-in-wheels"))
                .withGhosts(List.of(new Ghost("Knot", Sketches.offRoader())));

        assertGolden("side-view.svg", tag, () -> new Renderer().files().of(SideView.of(Sketches.offRoader(), options)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE", "ar-EG"})
    void sideViewInInchesAndFromTheVertical(String tag) throws IOException {
        new ShownUnits(LengthUnit.INCH, AngleReference.VERTICAL).use();
        try {
            SideView view = SideView.of(Sketches.offRoader(), SideViewOptions.of("tern", "Tern, revision 4"));
            assertGolden(
                    "side-view-inches.svg", tag, () -> new Renderer().files().of(view));
        } finally {
            ShownUnits.reset();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE", "ar-EG"})
    void unscaledSketchAsAFile(String tag) throws IOException {
        SideViewOptions options = SideViewOptions.of("sketch", "Sketch");

        assertGolden(
                "unscaled-sketch.svg", tag, () -> new Renderer().files().of(SideView.of(Sketches.unscaled(), options)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE", "ar-EG"})
    void bandStrip(String tag) throws IOException {
        StripReading reading = StripReading.of("rocker", "rocker-offset-in-wheels", "Rocker", 2, "")
                .ticks(List.of(new StripTick(-0.04, "Dunlin", "/packages/1"), new StripTick(0.02, "Knot", null)))
                .band(-0.06, 0.01)
                .median(-0.02)
                .value(0.03, 0.006)
                .earlier(List.of(0.05, 0.04))
                .verdict(StripVerdict.OUTSIDE_HIGH, "by 0.02 wheels")
                .build();

        assertGolden("band-strip.html", tag, () -> new Renderer().strip(BandStrip.of(reading)));
    }
}
