package studio.stancebook.drawing.sideview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.drawing.Disc;
import studio.stancebook.drawing.Stroke;
import studio.stancebook.paper.Step;
import studio.stancebook.quantity.Interval;

/** Where a class is drawn follows from domain.md: x = 0 at the front wheel, z = 0 at the ground, a tyre is 1 (here 1000). */
class ClassDrawingTest {

    private static ClassDrawing.Member member(long id, DimensionSet set) {
        return new ClassDrawing.Member(id, new Ghost("Invented " + id, set));
    }

    private static DimensionSet onTyresOf(double diameter) {
        double k = diameter / 700;
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800 * k)
                .set(Dimension.FRONT_TYRE_DIAMETER, diameter)
                .set(Dimension.REAR_TYRE_DIAMETER, diameter)
                .set(Dimension.FRONT_OVERHANG, 800 * k)
                .set(Dimension.REAR_OVERHANG, 900 * k)
                .set(Landmark.COWL, 420 * k, 1050 * k)
                .set(Landmark.SCREEN_TOP, 1120 * k, 1400 * k)
                .set(Landmark.BACKLIGHT_TOP, 2800 * k, 1380 * k)
                .set(Landmark.BACKLIGHT_BASE, 3300 * k, 1050 * k)
                .build();
    }

    private static List<Stroke> strokes(ClassDrawing drawing, String pen) {
        return drawing.behind().layers().stream()
                .flatMap(layer -> layer.strokes().stream())
                .filter(stroke -> stroke.cls().equals(pen))
                .toList();
    }

    private static double[] corner(Step step) {
        if (step instanceof Step.MoveTo to) {
            return new double[] {to.x(), to.y()};
        }
        return step instanceof Step.LineTo to ? new double[] {to.x(), to.y()} : new double[] {Double.NaN, Double.NaN};
    }

    @Test
    void liesOneOverTheOtherWhereOnlyTheSizeDiffers() {
        ClassDrawing drawing =
                ClassDrawing.of(List.of(member(1, onTyresOf(700)), member(2, onTyresOf(840))), null, List.of());

        assertThat(drawing.lines())
                .hasSize(2)
                .allSatisfy(line -> assertThat(line.path().steps().stream().map(ClassDrawingTest::corner))
                        .usingElementComparator((a, b) -> Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-6 ? 0 : 1)
                        .as("cowl and upper end of the windscreen, in wheels")
                        .contains(new double[] {600, -1500}, new double[] {1600, -2000}));
    }

    @Test
    void putsTheMedianOnTyresOfOneWheel() {
        ClassDrawing drawing = ClassDrawing.of(List.of(), new Ghost("", onTyresOf(840)), List.of());

        assertThat(drawing.median()).isNotNull();
        assertThat(drawing.median().layers().stream().flatMap(layer -> layer.discs().stream()))
                .filteredOn(disc -> disc.cls().equals("tyre"))
                .extracting(Disc::radius, Disc::x)
                .usingRecursiveFieldByFieldElementComparator()
                .hasSize(2)
                .anySatisfy(tyre -> assertThat((double) tyre.toList().get(1)).isCloseTo(4000, within(1e-6)))
                .allSatisfy(tyre -> assertThat((double) tyre.toList().get(0)).isCloseTo(500, within(1e-6)));
    }

    /** Not measurable is left out, never guessed (domain.md). */
    @Test
    void leavesOutWhatHasNoTyresOrNoSilhouette() {
        DimensionSet withoutTyres = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Landmark.COWL, 420, 1050)
                .set(Landmark.SCREEN_TOP, 1120, 1400)
                .build();

        ClassDrawing drawing = ClassDrawing.of(
                List.of(member(1, withoutTyres), member(2, Sketches.bare()), member(3, onTyresOf(700))),
                null,
                List.of());

        assertThat(drawing.lines()).extracting(ClassDrawing.Line::id).containsExactly(3L);
        assertThat(drawing.median()).isNull();
    }

    /** A height of 2.0 to 2.2 wheels is 2000 to 2200 above the ground; an open limit has no edge. */
    @Test
    void drawsAZoneAtItsLimitsAndNoEdgeWhereABandIsOpen() {
        ClassDrawing closed = ClassDrawing.of(
                List.of(member(1, onTyresOf(700))),
                null,
                List.of(new ClassZone(ClassZone.Kind.HEIGHT, new Interval(2.0, 2.2))));
        ClassDrawing open = ClassDrawing.of(
                List.of(member(1, onTyresOf(700))),
                null,
                List.of(new ClassZone(ClassZone.Kind.FRONT_OVERHANG, new Interval(0.9, Double.POSITIVE_INFINITY))));

        assertThat(strokes(closed, "zone-edge"))
                .extracting(edge -> corner(edge.path().steps().get(0))[1])
                .containsExactlyInAnyOrder(-2000.0, -2200.0);
        assertThat(strokes(open, "zone-edge"))
                .singleElement()
                .satisfies(edge ->
                        assertThat(corner(edge.path().steps().get(0))[0]).isEqualTo(-900));
    }

    /** 0 aims at the wheel centre, which is half a wheel above the ground (domain.md). */
    @Test
    void aimsTheScreenFromTheMediansCowl() {
        ClassDrawing drawing = ClassDrawing.of(
                List.of(),
                new Ghost("", onTyresOf(700)),
                List.of(new ClassZone(ClassZone.Kind.SCREEN_AIM, new Interval(0, 0.5))));

        assertThat(strokes(drawing, "zone").get(0).path().steps().stream()
                        .limit(3)
                        .map(ClassDrawingTest::corner))
                .usingElementComparator((a, b) -> Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-6 ? 0 : 1)
                .containsExactly(new double[] {600, -1500}, new double[] {0, -500}, new double[] {0, -1000});
    }
}
