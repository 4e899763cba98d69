package studio.stancebook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/** Hand cases worked from the definitions on the round numbers of {@link Sketches}; D = 710 mm there. */
class MeasuresTest {

    private static final MeasureRegistry REGISTRY = MeasureRegistry.builtIn();

    private static double value(String key, DimensionSet set) {
        return assertInstanceOf(Measured.class, REGISTRY.get(key).of(new Subject(set)))
                .value();
    }

    static Stream<Measure> everyMeasure() {
        return REGISTRY.all().stream();
    }

    @ParameterizedTest
    @CsvSource({
        "wheelbase-in-wheels, 2800/710",
        "wheels-spanned, 3510/710",
        "length-in-wheels, 4700/710",
        "height-in-wheels, 1750/710",
        "width-in-wheels, 1880/710",
        "front-overhang-in-wheels, 900/710",
        "rear-overhang-in-wheels, 1000/710",
        "clearance-in-wheels, 210/710",
        // mean rocker 330, mean wheel centre (350 + 360) / 2 = 355
        "rocker-offset-in-wheels, -25/710",
        "arch-gap-front-in-wheels, 70/710",
        "arch-gap-rear-in-wheels, 70/710",
        // a 45 degree windscreen from (500, 1100) meets x = 0 at z = 600, 250 above the centre
        "screen-aim-in-wheels, 250/710",
        "dash-to-axle-in-wheels, 500/710",
        "front-door-gap-in-wheels, 130/710",
        "rear-door-lead-in-wheels, 350/710",
        // belt at x = 1400 between (700, 1080) and (3100, 1160)
        "belt-height-in-wheels, 1103.3333333333333/710",
        "cowl-height-in-wheels, 1100/710",
        "bonnet-edge-height-in-wheels, 900/710",
        // edges at -380 and 420 around a tyre of 700, at 2380 and 3200 around one of 720; wheels at 0 and 2800.
        // Definitions: common practice, no source; studio decision 0101
        "arch-opening-front, 800/700",
        "arch-opening-rear, 820/720",
        "arch-centre-front-in-wheels, 20/710",
        "arch-centre-rear-in-wheels, -10/710",
        "tail-height-in-wheels, 1000/710",
        "deck-length-in-wheels, 150/710",
        "arch-offset-front-in-wheels, 10/710",
        "arch-offset-rear-in-wheels, -10/710",
        // from (3600, 1150) up to (3300, 1650): at x = 2800 it is 1150 + 800 x 5 / 3, the centre at 360
        "backlight-aim-in-wheels, 2123.3333333333335/710",
        "rear-sidewall-share, 140/720",
        "rear-rim-share, 440/720",
        "wheelbase-to-height, 2800/1750",
        "rear-track-to-width, 1620/1880",
        "h-point-position, 1500/2800",
        "tyre-stagger, 720/700",
        "sidewall-share, 140/700",
        "rim-share, 420/700",
        "wheelbase-share, 2800/4700",
        "front-overhang-share, 900/4700",
        "rear-overhang-share, 1000/4700",
        "overhang-balance, 1000/900",
        "height-to-length, 1750/4700",
        "height-to-width, 1750/1880",
        "track-to-width, 1600/1880",
        "bonnet-share, 1400/4700",
        "cabin-share, 3100/4700",
        "roof-apex-position, 1400/2800",
        "seat-height-share, 700/1750",
        // x = 1400: roof 1700 + 50 x 300/400 = 1737.5, belt 1080 + 80 x 700/2400, rocker 320 + 20 x 900/1800 = 330
        "glass-to-body, 3805/4640",
        "footprint, 4508/1000"
    })
    void followItsDefinition(String key, String fraction) {
        String[] parts = fraction.split("/");
        double expected = Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);

        assertEquals(expected, value(key, Sketches.complete()), 1e-12);
    }

    @Test
    void measureLinesFromTheHorizontal() {
        DimensionSet set = Sketches.complete();

        assertEquals(45, value("screen-angle", set), 1e-12);
        assertEquals(Math.toDegrees(Math.atan2(500, 300)), value("backlight-angle", set), 1e-12);
        assertEquals(Math.toDegrees(Math.atan2(80, 2400)), value("belt-rise", set), 1e-12);
    }

    /** Shoelace sums of the polygons of {@link Sketches}, worked here independently of the geometry library. */
    @Test
    void compareAreas() {
        DimensionSet set = Sketches.complete();
        double[] body = {
            -900, 480, -880, 800, 500, 1100, 1100, 1700, 1500, 1750, 3300, 1650, 3600, 1150, 3800, 900, 3800, 0, -900, 0
        };

        assertEquals(shoelace(body) / (4700.0 * 1750), value("profile-fill", set), 1e-12);
        assertTrue(value("glass-area-share", set) > 0.1 && value("glass-area-share", set) < 0.3);
    }

    /** One side view, its outline recorded open, closed along the underbody, drawn rearward first, and without an underbody. */
    @Test
    void fillTheSameShareHoweverTheOutlineIsRecorded() {
        DimensionSet open = Sketches.complete();
        List<Point> outline = open.points(Polyline.OUTLINE);
        List<Point> backwards = new ArrayList<>(outline);
        Collections.reverse(backwards);
        List<Point> underneath = new ArrayList<>(open.points(Polyline.UNDERBODY));
        Collections.reverse(underneath);
        List<Point> closed = new ArrayList<>(outline);
        closed.addAll(underneath);
        double expected = value("profile-fill", open);

        assertEquals(
                expected,
                value("profile-fill", open.toBuilder().without("underbody").build()),
                1e-12);
        assertEquals(
                expected,
                value(
                        "profile-fill",
                        open.toBuilder().set(Polyline.OUTLINE, backwards).build()),
                1e-12);
        assertEquals(outline.get(0), closed.get(closed.size() - 1));
        assertEquals(
                expected,
                value(
                        "profile-fill",
                        open.toBuilder().set(Polyline.OUTLINE, closed).build()),
                1e-12);
    }

    private static double shoelace(double[] ring) {
        double twice = 0;
        for (int i = 0; i < ring.length; i += 2) {
            int next = (i + 2) % ring.length;
            twice += ring[i] * ring[next + 1] - ring[next] * ring[i + 1];
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void fillTheirBoxCompletelyWhenTheOutlineIsTheBox() {
        DimensionSet box = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.OVERALL_LENGTH, 4000)
                .set(Dimension.OVERALL_HEIGHT, 1500)
                .set(Polyline.OUTLINE, List.of(new Point(-600, 1500), new Point(3400, 1500), new Point(3400, 0)))
                .build();

        // A triangle on the ground closed along it: the outline drops to the ground at both ends, so it is the box.
        assertEquals(1, value("profile-fill", box), 1e-12);
    }

    @ParameterizedTest
    @MethodSource("everyMeasure")
    void existForTheCompleteSketch(Measure measure) {
        assertInstanceOf(Measured.class, measure.of(new Subject(Sketches.complete())), measure.key());
    }

    @ParameterizedTest
    @MethodSource("everyMeasure")
    void doNotChangeWithScaleUnlessTheyAreAreas(Measure measure) {
        double expected = measure.unit() == MeasureUnit.SQUARE_METRES ? 1.21 : 1;

        double ratio = value(measure.key(), Sketches.scaled(1.1)) / value(measure.key(), Sketches.complete());

        assertEquals(expected, ratio, 1e-9);
    }

    /** First-order sensitivities against central differences on the recorded values themselves. */
    @ParameterizedTest
    @MethodSource("everyMeasure")
    void knowHowTheyChangeWithEachRecordedValue(Measure measure) {
        DimensionSet set = Sketches.complete();
        Map<Variable, Double> slopes = ((Measured) measure.of(new Subject(set))).sensitivities();
        double step = 0.01;
        for (Variable variable : Variable.all()) {
            if (variable.movable() && variable != Variable.TYRE_DIAMETER) {
                double up = value(measure.key(), set.moved(variable, step));
                double down = value(measure.key(), set.moved(variable, -step));
                double expected = (up - down) / (2 * step);
                assertEquals(
                        expected,
                        slopes.getOrDefault(variable, 0.0),
                        1e-7 + 1e-5 * Math.abs(expected),
                        () -> measure.key() + " by " + variable.key());
            }
        }
    }

    @Test
    void varyWithOneDiameterWhenBothAxlesCarryTheSameTyre() {
        DimensionSet set = Sketches.complete().toBuilder()
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .build();

        Measured wheels = (Measured) REGISTRY.get("wheels-spanned").of(new Subject(set));

        assertEquals(-2800 / (700.0 * 700), wheels.sensitivities().get(Variable.TYRE_DIAMETER), 1e-15);
        assertEquals(2800.0 / 723 + 1, value("wheels-spanned", set.moved(Variable.TYRE_DIAMETER, 23)), 1e-12);
    }

    @ParameterizedTest
    @MethodSource("everyMeasure")
    void nameWhatIsMissingWhenOnlyAWheelbaseIsRecorded(Measure measure) {
        DimensionSet bare =
                DimensionSet.builder().set(Dimension.WHEELBASE, 2800).build();

        NotMeasurable none = assertInstanceOf(NotMeasurable.class, measure.of(new Subject(bare)));

        assertEquals(NotMeasurable.Why.MISSING, none.why());
        assertTrue(
                measure.needs().containsAll(none.missing()) && !none.missing().isEmpty());
    }

    @Test
    void giveOnlyRatiosAndAnglesForASketchWithoutDimensions() {
        DimensionSet sketch =
                Sketches.scaled(0.001).toBuilder().scale(Scale.UNSCALED).build();

        for (Measure measure : REGISTRY.all()) {
            boolean measured = measure.of(new Subject(sketch)) instanceof Measured;
            assertEquals(measure.unit() != MeasureUnit.SQUARE_METRES, measured, measure.key());
        }
    }

    @Test
    void takeTheTypedAngleOnlyWithoutGeometryAndSayWhich() {
        DimensionSet typed = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.APPROACH_ANGLE, 31)
                .set(Dimension.SCREEN_ANGLE, 38)
                .build();

        Measured approach = (Measured) REGISTRY.get("approach-angle").of(new Subject(typed));
        Measured screen = (Measured) REGISTRY.get("screen-angle").of(new Subject(typed));

        assertEquals(31, approach.value());
        assertEquals(Set.of(Note.TYPED), approach.notes());
        assertEquals(Set.of(Note.TYPED), screen.notes());
    }

    @Test
    void sayUnloadedTyreWhenNoLoadedRadiusIsRecorded() {
        DimensionSet set = Sketches.complete();
        DimensionSet loaded = set.toBuilder()
                .set(Dimension.FRONT_LOADED_RADIUS, 338)
                .set(Dimension.REAR_LOADED_RADIUS, 347)
                .build();
        Measure approach = REGISTRY.get("approach-angle");

        assertEquals(Set.of(Note.UNLOADED_TYRE), ((Measured) approach.of(new Subject(set))).notes());
        assertEquals(Set.of(), ((Measured) approach.of(new Subject(loaded))).notes());
    }

    /** Domain page: real tyres lie within 1.3 % of the rule; JCGM 100, 4.3.7 makes 1.3 % / sqrt 3 of that bound. */
    @Test
    void carryTheUncertaintyOfADesignation() {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2850)
                .uncertainty("wheelbase", 0)
                .tyres(TyreDesignation.parse("265/70R17"))
                .build();

        Measured wheels = (Measured) REGISTRY.get("wheelbase-in-wheels").of(new Subject(set));

        // 265 x 0.70 = 185.5, rounded half up to 186; 432 + 2 x 186 = 804
        assertEquals(2850.0 / 804, wheels.value(), 1e-12);
        assertEquals(0.013 / Math.sqrt(3) * 2850 / 804, wheels.uncertainty(), 1e-12);
    }

    @Test
    void sayNominalForAFlotationSize() {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2850)
                .tyres(TyreDesignation.parse("35x12.50R17LT"))
                .build();

        Measured wheels = (Measured) REGISTRY.get("wheelbase-in-wheels").of(new Subject(set));

        assertEquals(2850 / (35 * 25.4), wheels.value(), 1e-12);
        assertEquals(Set.of(Note.NOMINAL_DIAMETER), wheels.notes());
    }
}
