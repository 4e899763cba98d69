package studio.stancebook.drawing.sideview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.drawing.rendering.Renderer;

class SideViewTest {

    private static final double D = 804;

    private final Renderer renderer = new Renderer();

    private static SideView of(DimensionSet set) {
        return SideView.of(set, SideViewOptions.of("view", "Tern"));
    }

    private Document svg(DimensionSet set) {
        return Renderer.parsed(renderer.files().of(of(set)));
    }

    private static List<Element> all(Document document, String tag, String pen) {
        NodeList nodes = document.getElementsByTagName(tag);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            Element element = (Element) nodes.item(i);
            if (List.of(element.getAttribute("class").split(" ")).contains(pen)) {
                found.add(element);
            }
        }
        return found;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    @Test
    void tyresStandOnTheGroundAWheelbaseApart() {
        List<Element> tyres = all(svg(Sketches.offRoader()), "circle", "tyre");

        assertEquals(2, tyres.size());
        assertEquals(0, number(tyres.get(0), "cx"), 0.05);
        assertEquals(2760, number(tyres.get(1), "cx"), 0.05);
        for (Element tyre : tyres) {
            assertEquals(D / 2, number(tyre, "r"), 0.05);
            assertEquals(0, number(tyre, "cy") + number(tyre, "r"), 0.05);
        }
    }

    /** 17 inch: 432 mm by the table of nominal rim diameters. */
    @Test
    void rimsHaveTheNominalRimDiameter() {
        for (Element rim : all(svg(Sketches.offRoader()), "circle", "rim")) {
            assertEquals(216, number(rim, "r"), 0.05);
        }
    }

    /** 2760 / 804 + 1 = 4.43: three whole circles beside the front tyre, the rear tyre partly over the last. */
    @Test
    void wheelRulerStepsByOneDiameterFromTheFrontTyre() {
        List<Element> circles = all(svg(Sketches.offRoader()), "circle", "ghost-wheel").stream()
                .filter(circle -> number(circle, "cx") < 3000)
                .toList();

        assertEquals(3, circles.size());
        for (int i = 0; i < 3; i++) {
            assertEquals((i + 1) * D, number(circles.get(i), "cx"), 0.05);
            assertEquals(D / 2, number(circles.get(i), "r"), 0.05);
        }
    }

    @Test
    void wheelRulerSaysBothCounts() {
        assertTrue(
                texts(svg(Sketches.offRoader())).contains("4.43 wheels spanned, both counted; 3.43 centre to centre"));
    }

    private static List<String> texts(Document document) {
        NodeList nodes = document.getElementsByTagName("text");
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent());
        }
        return texts;
    }

    /** (1190 - 430 (1742 - 1190) / (905 - 430)) = 690.3 mm above the ground at the front wheel centre. */
    @Test
    void windscreenLineIsCarriedDownToItsAim() {
        Element aim = all(svg(Sketches.offRoader()), "circle", "aim-point").get(0);

        assertEquals(0, number(aim, "cx"), 0.05);
        assertEquals(-690.3, number(aim, "cy"), 0.05);
    }

    @Test
    void silhouettePassesThroughEveryLandmark() {
        String paths = paths(svg(Sketches.offRoader()), "tape");

        for (String point : List.of("430-1190", "905-1742", "1700-1846", "3290-1780", "3500-1240", "3530-1150")) {
            assertTrue(paths.contains(point), point + " in " + paths);
        }
    }

    private static String paths(Document document, String pen) {
        StringBuilder text = new StringBuilder();
        all(document, "path", pen)
                .forEach(path -> text.append(path.getAttribute("d")).append('\n'));
        return text.toString();
    }

    @Test
    void leavesOutWhatIsNotRecorded() {
        Document bare = svg(Sketches.bare());

        assertEquals("", paths(bare, "tape"));
        assertTrue(all(bare, "circle", "aim-point").isEmpty());
        assertTrue(texts(bare).stream().noneMatch(text -> text.contains("L103") || text.contains("approach")));
        assertFalse(paths(bare, "construction").isEmpty());
    }

    @Test
    void wheelbaseAloneIsStillDrawn() {
        DimensionSet alone =
                DimensionSet.builder().set(Dimension.WHEELBASE, 2600).build();

        assertTrue(texts(svg(alone)).contains("L101 wheelbase 2600"));
    }

    @Test
    void unscaledSketchSaysSoAndGivesNoLengths() {
        Document sketch = svg(Sketches.unscaled());

        assertTrue(texts(sketch).contains("Unscaled sketch: proportions only, no lengths"));
        assertTrue(texts(sketch).stream().noneMatch(text -> text.contains("L101")));
        assertTrue(texts(sketch).contains("wheelbase 3.44 wheels"));
    }

    @Test
    void marksWhatIsOutsideInRedTape() {
        SideView view = SideView.of(
                Sketches.offRoader(),
                SideViewOptions.of("view", "Tern").withOutside(Set.of("rocker-offset-in-wheels")));
        Document document = Renderer.parsed(renderer.files().of(view));

        assertEquals(
                1,
                all(document, "path", "out").stream()
                        .filter(path -> path.getAttribute("class").startsWith("tape"))
                        .count());
        assertTrue(texts(document).stream().anyMatch(text -> text.endsWith("outside its band")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar", "hi-IN-u-nu-deva"})
    void fileIsTheSameXmlUnderEveryLocale(String tag) {
        String expected = renderer.files().of(of(Sketches.offRoader()));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            String found = new Renderer().files().of(of(Sketches.offRoader()));
            Renderer.parsed(found);
            assertEquals(expected, found);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void hostileTitlesStayText() {
        SideView view = SideView.of(Sketches.bare(), SideViewOptions.of("view", "<b>\u0001 \"A & B'\" </title>"));

        Document document = Renderer.parsed(renderer.files().of(view));
        Renderer.parsed(renderer.sideView(view));

        assertEquals(
                "<b> \"A & B'\" </title>",
                document.getElementsByTagName("title").item(0).getTextContent());
    }

    static Stream<DimensionSet> sketches() {
        return Stream.of(Sketches.offRoader(), Sketches.bare(), Sketches.unscaled());
    }

    @ParameterizedTest
    @MethodSource("sketches")
    void thumbnailsAreUnder4Kilobytes(DimensionSet set) {
        String text = renderer.thumbnail(SideView.thumbnail(set));
        Renderer.parsed(text);

        assertTrue(text.getBytes(StandardCharsets.UTF_8).length < 4096, text);
    }

    @Test
    void pageCarriesNoStyleOfItsOwn() {
        String page = renderer.sideView(of(Sketches.offRoader()));

        assertFalse(page.contains("style="));
        assertFalse(page.contains("<style"));
    }
}
