package studio.stancebook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;

/**
 * The height of a wheel centre on a tyre whose loaded radius is not recorded. A deflection from 0 to a that is not
 * corrected has the standard uncertainty a / sqrt 3 (JCGM 100, F.2.4.5 with 4.3.7); a is 5 % of the free radius: studio
 * decision 0086, common practice, no source.
 */
class UnloadedTyreTest {

    private static final double SHARE = 0.05 / Math.sqrt(3);

    private static Measured measured(String measure, DimensionSet set) {
        return (Measured) MeasureRegistry.builtIn().get(measure).of(new Subject(set));
    }

    /** The same centre heights, 350 and 360 mm, known exactly. */
    private static DimensionSet loaded() {
        return Sketches.complete().toBuilder()
                .set(Dimension.FRONT_LOADED_RADIUS, 350)
                .set(Dimension.REAR_LOADED_RADIUS, 360)
                .uncertainty("frontLoadedRadius", 0)
                .uncertainty("rearLoadedRadius", 0)
                .build();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rocker-offset-in-wheels",
                "arch-gap-front-in-wheels",
                "arch-gap-rear-in-wheels",
                "screen-aim-in-wheels",
                "approach-angle",
                "departure-angle",
                "ramp-angle"
            })
    void isSaidByEveryMeasureThatUsesItAndWidensItsUncertainty(String measure) {
        Measured unloaded = measured(measure, Sketches.complete());
        Measured loaded = measured(measure, loaded());

        assertTrue(unloaded.notes().contains(Note.UNLOADED_TYRE));
        assertEquals(Set.of(), loaded.notes());
        assertEquals(loaded.value(), unloaded.value(), 1e-9);
        assertTrue(unloaded.uncertainty() > loaded.uncertainty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"wheelbase-in-wheels", "height-in-wheels", "front-door-gap-in-wheels", "sidewall-share"})
    void isNoMatterForMeasuresThatDoNotUseIt(String measure) {
        assertEquals(Set.of(), measured(measure, Sketches.complete()).notes());
    }

    /** Centres at 350 and 360 mm: the mean deflection is 355 x the share, over D = 710. */
    @Test
    void addsTheDeflectionOfBothTyresToTheRockerOffset() {
        DimensionSetBuilder exact = Sketches.complete().toBuilder();
        Sketches.complete().valueKeys().forEach(key -> exact.uncertainty(key, 0));

        assertEquals(
                355 * SHARE / 710,
                measured("rocker-offset-in-wheels", exact.build()).uncertainty(),
                1e-12);
    }
}
