package studio.stancebook.drawing.sideview;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.demo.InventedCatalogue;
import studio.stancebook.demo.InventedVehicle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.dimension.Scale;
import studio.stancebook.drawing.rendering.Renderer;
import studio.stancebook.geometry.Point;

/** Whatever passes the range checks is drawn, however odd: as well-formed XML, of bounded size, without a broken number. */
class OddSideViewsTest {

    private static final List<InventedVehicle> VEHICLES = InventedCatalogue.vehicles();

    private final Renderer renderer = new Renderer();

    private void assertDrawn(DimensionSet set) {
        SideViewOptions options = SideViewOptions.of("odd", "Odd")
                .withOutside(Set.of("screen-angle", "belt-rise", "rear-door-lead-in-wheels", "length-in-wheels"))
                .withTooClose(Set.of("ramp-angle", "clearance-in-wheels"))
                .withGhosts(List.of(new Ghost("Other", VEHICLES.get(3).dimensions()), new Ghost("Own", set)))
                .alignedAt(Alignment.H_POINT, true);
        SideView view = SideView.of(set, options);
        String page = renderer.sideView(view);
        Renderer.parsed(page);
        Renderer.parsed(renderer.files().of(view));
        Renderer.parsed(renderer.thumbnail(SideView.thumbnail(set)));
        assertFalse(page.contains("NaN") || page.contains("Infinity"), page);
        assertTrue(page.getBytes(StandardCharsets.UTF_8).length < 150_000);
    }

    private static Point anywhere(SplittableRandom random) {
        return new Point(
                RangeChecks.X_MM.lower() + random.nextDouble() * RangeChecks.X_MM.width(),
                RangeChecks.Z_MM.lower() + random.nextDouble() * RangeChecks.Z_MM.width());
    }

    @RepeatedTest(200)
    void gapsAndStrayPoints(RepetitionInfo repetition) {
        SplittableRandom random = new SplittableRandom(repetition.getCurrentRepetition());
        DimensionSet set = VEHICLES.get(random.nextInt(VEHICLES.size())).dimensions();
        DimensionSetBuilder builder = set.toBuilder();
        for (String key : set.valueKeys()) {
            if (!key.equals("wheelbase") && random.nextDouble() < 0.4) {
                builder.without(key);
            }
        }
        for (Landmark landmark : Landmark.values()) {
            if (random.nextDouble() < 0.3) {
                Point stray = anywhere(random);
                builder.set(landmark, stray.x(), stray.z());
            }
        }
        for (Dimension dimension : Dimension.values()) {
            if (random.nextDouble() < 0.15) {
                builder.set(
                        dimension,
                        dimension.range().lower()
                                + random.nextDouble() * dimension.range().width());
            }
        }
        for (Polyline polyline : Polyline.values()) {
            if (random.nextDouble() < 0.3) {
                List<Point> points = new ArrayList<>();
                int size = polyline.fewestPoints() + random.nextInt(30);
                for (int i = 0; i < size; i++) {
                    points.add(anywhere(random));
                }
                builder.set(polyline, points);
            }
        }
        assertDrawn(builder.build());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 0.5, 1, 3.44, 1e4, 1e7})
    void sketchesOfAnyUnit(double unit) {
        DimensionSetBuilder builder = DimensionSet.builder().scale(Scale.UNSCALED);
        Sketches.unscaled().scalars().forEach((dimension, value) -> builder.set(dimension, value * unit));
        Sketches.unscaled().landmarks().forEach((landmark, at) -> builder.set(landmark, at.x() * unit, at.z() * unit));

        assertDrawn(builder.build());
    }

    @Test
    void repeatedPointsAndLinesOfOnePlace() {
        Point one = new Point(100, 500);
        assertDrawn(Sketches.offRoader().toBuilder()
                .set(Polyline.OUTLINE, List.of(one, one, one, one))
                .set(Polyline.DAYLIGHT_OPENING, List.of(one, one, one))
                .set(Polyline.UNDERBODY, List.of(one, one))
                .set(Landmark.SCREEN_TOP, 430, 1190)
                .build());
    }

    @Test
    void fiveThousandPoints() {
        List<Point> wave = new ArrayList<>();
        for (int i = 0; i < Polyline.MOST_POINTS; i++) {
            wave.add(new Point(-850 + i, 900 + 800 * Math.sin(i / 3.0)));
        }
        assertDrawn(Sketches.offRoader().toBuilder()
                .set(Polyline.OUTLINE, wave)
                .set(Polyline.UNDERBODY, wave)
                .set(Polyline.DAYLIGHT_OPENING, wave)
                .build());
    }
}
