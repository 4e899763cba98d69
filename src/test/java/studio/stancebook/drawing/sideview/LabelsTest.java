package studio.stancebook.drawing.sideview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import studio.stancebook.demo.InventedCatalogue;
import studio.stancebook.demo.InventedVehicle;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.drawing.rendering.Renderer;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;

/** Over every invented vehicle: labels keep clear of each other and of the edge, and pictures stay small. */
class LabelsTest {

    private static final Set<String> ALL =
            MeasureRegistry.builtIn().all().stream().map(Measure::key).collect(Collectors.toSet());

    private final Renderer renderer = new Renderer();

    static Stream<InventedVehicle> vehicles() {
        return InventedCatalogue.vehicles().stream();
    }

    private static List<TextLine> words(Sheet sheet) {
        return sheet.layers().stream().flatMap(layer -> layer.words().stream()).toList();
    }

    /**
     * Advance widths of Overpass SemiBold from space to tilde, in thousandths of an em, as Chromium measures them on a
     * canvas ({@code measureText} at 1000 px).
     */
    private static final int[] OVERPASS = {
        245, 291, 430, 696, 599, 858, 700, 235, 363, 363, 546, 639, 241, 410, 237, 512, 653, 391, 612,
        601, 636, 614, 609, 532, 623, 609, 237, 237, 639, 639, 639, 512, 826, 704, 679, 642, 701, 616,
        571, 684, 714, 292, 554, 692, 564, 808, 715, 725, 636, 725, 682, 609, 596, 704, 672, 845, 653,
        670, 643, 387, 512, 387, 639, 494, 0, 547, 572, 528, 572, 551, 352, 573, 582, 273, 273, 550,
        281, 866, 582, 564, 574, 573, 408, 485, 388, 582, 543, 737, 557, 555, 531, 380, 291, 380, 639
    };

    /** With 0.78 em above and 0.24 em below the line. */
    private static Lettering.Box box(TextLine words, double em) {
        double width = 0;
        for (char c : words.text().toCharArray()) {
            width += c == '°' ? 0.414 * em : c == '\u2212' ? 0.639 * em : OVERPASS[c - ' '] / 1000.0 * em;
        }
        double left = words.anchor().equals("start")
                ? words.x()
                : words.anchor().equals("end") ? words.x() - width : words.x() - width / 2;
        return new Lettering.Box(left, words.y() - 0.78 * em, left + width, words.y() + 0.24 * em);
    }

    private static void assertClear(Sheet sheet) {
        List<TextLine> words = words(sheet);
        for (int i = 0; i < words.size(); i++) {
            Lettering.Box one = box(words.get(i), sheet.emMm());
            for (int j = i + 1; j < words.size(); j++) {
                Lettering.Box other = box(words.get(j), sheet.emMm());
                assertFalse(one.meets(other), words.get(i) + " lies over " + words.get(j));
            }
            assertTrue(one.left() >= sheet.left() - 1, "off the sheet: " + words.get(i));
            assertTrue(one.right() <= sheet.left() + sheet.width() + 1, "off the sheet: " + words.get(i));
            assertTrue(one.bottom() <= sheet.top() + sheet.height() + 1, "off the sheet: " + words.get(i));
        }
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void labelsDoNotMeet(InventedVehicle vehicle) {
        SideView view = SideView.of(vehicle.dimensions(), SideViewOptions.of("a", vehicle.name()));

        assertTrue(words(view.wide()).size() > 10);
        assertClear(view.wide());
        assertClear(view.narrow());
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void labelsDoNotMeetWhenEverythingIsOutside(InventedVehicle vehicle) {
        SideView view = SideView.of(
                vehicle.dimensions(), SideViewOptions.of("a", vehicle.name()).withOutside(ALL));

        assertClear(view.wide());
        assertClear(view.narrow());
    }

    @Test
    void ghostsAreNamedSideBySide() {
        List<Ghost> ghosts = new ArrayList<>();
        List<InventedVehicle> all = InventedCatalogue.vehicles();
        for (int i = 1; i <= 5; i++) {
            ghosts.add(new Ghost(all.get(i).name(), all.get(i).dimensions()));
        }
        DimensionSet set = all.get(0).dimensions();

        SideView view = SideView.of(set, SideViewOptions.of("a", "A").withGhosts(ghosts));

        assertClear(view.wide());
        for (Ghost ghost : ghosts) {
            assertEquals(
                    1,
                    words(view.wide()).stream()
                            .filter(words -> words.text().equals(ghost.name()))
                            .count());
        }
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void picturesStaySmall(InventedVehicle vehicle) {
        String thumbnail = renderer.thumbnail(SideView.thumbnail(vehicle.dimensions()));
        SideView view = SideView.of(vehicle.dimensions(), SideViewOptions.of("a", vehicle.name()));
        String page = renderer.sideView(view);
        Renderer.parsed(thumbnail);
        Renderer.parsed(page);
        Renderer.parsed(renderer.files().of(view));

        assertTrue(thumbnail.getBytes(StandardCharsets.UTF_8).length < 4096, "" + thumbnail.length());
        assertTrue(page.getBytes(StandardCharsets.UTF_8).length < 60_000, "" + page.length());
    }
}
