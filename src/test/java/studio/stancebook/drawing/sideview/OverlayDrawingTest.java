package studio.stancebook.drawing.sideview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.drawing.Disc;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.Stroke;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.geometry.Point;
import studio.stancebook.paper.Path;
import studio.stancebook.paper.Step;

/** What is drawn of several vehicles is where their dimension sets say, read back from the coordinates of the sheet. */
class OverlayDrawingTest {

    private static final Ghost FIRST = new Ghost("Ash", Sketches.offRoader());

    /** As the first, longer and on larger tyres. */
    private static final Ghost SECOND = new Ghost("Birch", second());

    /** Coordinates are written to a tenth of a millimetre. */
    private static final double NEAR_MM = 1e-6;

    private static DimensionSet second() {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, 3000)
                .set(Dimension.FRONT_TYRE_DIAMETER, 884.4)
                .set(Dimension.REAR_TYRE_DIAMETER, 884.4)
                .set(Dimension.FRONT_OVERHANG, 900)
                .set(Dimension.REAR_OVERHANG, 1100)
                .set(Dimension.OVERALL_HEIGHT, 1900)
                .set(Landmark.COWL, 500, 1250)
                .set(Landmark.SCREEN_TOP, 1000, 1800)
                .set(Landmark.BACKLIGHT_TOP, 3500, 1850)
                .set(Landmark.BACKLIGHT_BASE, 3900, 1300)
                .set(Landmark.H_POINT, 1500, 820)
                .build();
    }

    private static double x(DimensionSet set, Alignment alignment) {
        return switch (alignment) {
            case FRONT_WHEEL -> 0;
            case REAR_WHEEL -> set.scalar(Dimension.WHEELBASE).orElseThrow();
            case COWL -> set.landmark(Landmark.COWL).orElseThrow().x();
            case H_POINT -> set.landmark(Landmark.H_POINT).orElseThrow().x();
        };
    }

    private static List<Disc> wheels(Sheet sheet, String pen) {
        return sheet.layers().stream()
                .flatMap(layer -> layer.discs().stream())
                .filter(disc -> disc.cls().equals(pen))
                .sorted(Comparator.comparingDouble(Disc::x))
                .toList();
    }

    private static Path body(Sheet sheet, String pen) {
        return sheet.layers().stream()
                .filter(layer -> layer.cls().equals("side-view__body"))
                .flatMap(layer -> layer.strokes().stream())
                .filter(stroke -> stroke.cls().equals(pen))
                .map(Stroke::path)
                .findFirst()
                .orElseThrow();
    }

    /** Whether one of the ends of a path's steps is this point. */
    private static boolean passes(Path path, Point at) {
        return path.steps().stream().anyMatch(step -> {
            if (step instanceof Step.CurveTo curve) {
                return isAt(curve.x(), curve.y(), at);
            }
            return step instanceof Step.LineTo line && isAt(line.x(), line.y(), at)
                    || step instanceof Step.MoveTo move && isAt(move.x(), move.y(), at);
        });
    }

    private static boolean isAt(double x, double y, Point at) {
        return Math.abs(x - at.x()) < NEAR_MM && Math.abs(y + at.z()) < NEAR_MM;
    }

    @ParameterizedTest
    @EnumSource(Alignment.class)
    void standAtTheirPointInMillimetres(Alignment alignment) {
        Sheet sheet = OverlayDrawing.of("Two", List.of(FIRST, SECOND), alignment, false)
                .wide();
        double shift = x(FIRST.dimensions(), alignment) - x(SECOND.dimensions(), alignment);

        assertThat(wheels(sheet, "line-a")).extracting(Disc::x).containsExactly(0.0, 2760.0);
        List<Disc> others = wheels(sheet, "line-b");
        assertThat(others.get(0).x()).isCloseTo(shift, within(1e-9));
        assertThat(others.get(1).x()).isCloseTo(3000 + shift, within(1e-9));
        assertThat(others.get(0).radius()).isCloseTo(442.2, within(1e-9));
        assertThat(passes(body(sheet, "line-a"), new Point(430, 1190))).isTrue();
        assertThat(passes(body(sheet, "line-b"), new Point(500 + shift, 1250))).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Alignment.class)
    void standAtTheirPointOnTheSameTyre(Alignment alignment) {
        Sheet sheet = OverlayDrawing.of("Two", List.of(FIRST, SECOND), alignment, true)
                .wide();
        double factor = 804 / 884.4;
        double shift = x(FIRST.dimensions(), alignment) - factor * x(SECOND.dimensions(), alignment);

        List<Disc> others = wheels(sheet, "line-b");
        assertThat(others.get(0).radius()).isCloseTo(402, within(1e-9));
        assertThat(others.get(0).y() + others.get(0).radius())
                .as("on the ground line")
                .isCloseTo(0, within(1e-9));
        assertThat(others.get(1).x()).isCloseTo(factor * 3000 + shift, within(1e-9));
        assertThat(passes(body(sheet, "line-b"), new Point(factor * 500 + shift, factor * 1250)))
                .isTrue();
    }

    @Test
    void haveLabelsThatLieOverNothingAndWithinTheSheet() {
        List<Ghost> alike = IntStream.range(0, OverlayDrawing.MOST)
                .mapToObj(i -> new Ghost("A name as long as names of packages get, number " + i, Sketches.offRoader()))
                .toList();
        SideView view = OverlayDrawing.of("Six", alike, Alignment.FRONT_WHEEL, false);

        for (Sheet sheet : List.of(view.wide(), view.narrow())) {
            Lettering lettering = new Lettering(sheet.emMm());
            List<TextLine> words = sheet.layers().stream()
                    .flatMap(layer -> layer.words().stream())
                    .toList();
            assertThat(words).hasSize(OverlayDrawing.MOST);
            for (TextLine label : words) {
                assertThat(lettering.take(label)).as(label.text()).isTrue();
                Lettering.Box box = lettering.boxOf(label);
                assertThat(box.right()).isLessThanOrEqualTo(sheet.left() + sheet.width());
                assertThat(box.top()).isGreaterThanOrEqualTo(sheet.top());
                assertThat(box.bottom()).isLessThanOrEqualTo(sheet.top() + sheet.height());
            }
        }
    }

    @Test
    void areDrawnFromAWheelbaseTyresAndHeightToo() {
        List<Ghost> bare = new ArrayList<>(List.of(FIRST, new Ghost("Cedar", Sketches.bare())));
        Sheet sheet =
                OverlayDrawing.of("Two", bare, Alignment.REAR_WHEEL, false).wide();

        assertThat(wheels(sheet, "line-b").get(1).x()).isCloseTo(2760, within(1e-9));
        assertThat(passes(body(sheet, "line-b"), new Point(2760 + 316, 1460)))
                .as("half a tyre of 632 mm behind the rear wheel, at its height")
                .isTrue();
        assertThat(Sketches.bare().tyreDiameter(Axle.REAR)).hasValue(632);
    }

    @Test
    void areTwoToSix() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OverlayDrawing.of("One", List.of(FIRST), Alignment.COWL, false))
                .withMessageContaining("not 1");
        List<Ghost> seven = IntStream.range(0, 7).mapToObj(i -> FIRST).toList();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OverlayDrawing.of("Seven", seven, Alignment.COWL, false))
                .withMessageContaining("not 7");
    }
}
