package studio.stancebook.classes.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Scale;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.StudioRatio;

class ValueLayoutTest {

    private final ValueLayout layout = ValueLayout.of(MeasureRegistry.builtIn());

    private double value(double[] values, String measure) {
        return values[layout.place(measure).orElseThrow()];
    }

    private static DimensionSet set() {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2800)
                .set(Dimension.OVERALL_LENGTH, 4600)
                .set(Dimension.FRONT_OVERHANG, 850)
                .set(Dimension.REAR_OVERHANG, 950)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .build();
    }

    @Test
    void hasThePlacesOfTheRegistry() {
        assertThat(layout.keys())
                .isEqualTo(MeasureRegistry.builtIn().all().stream()
                        .map(Measure::key)
                        .toList());
        assertThat(value(layout.measuresOf(set()), "wheelbase-in-wheels")).isEqualTo(4.0);
        assertThat(value(layout.measuresOf(set()), "height-in-wheels")).isNaN();
        assertThat(layout.place("no-such-measure")).isEmpty();
    }

    /** Otherwise a change of a formula could go unnoticed: each measure must have a value on one of the side views. */
    @Test
    void triesEveryMeasureOnSomeSideView() {
        for (String line : Probe.trace(MeasureRegistry.builtIn()).split("\n")) {
            String[] words = line.split(" ");
            if (words.length > 1) {
                assertThat(words[1].equals("-") && words[2].equals("-"))
                        .as(line)
                        .isFalse();
            }
        }
    }

    @Test
    void hasTheSameFingerprintForTheSameListAndAnotherForAnother() {
        MeasureRegistry longer = MeasureRegistry.with(
                List.of(new StudioRatio("own", "Own", List.of(Reading.OVERALL_WIDTH), List.of(Reading.WHEELBASE))));
        MeasureRegistry other = MeasureRegistry.with(
                List.of(new StudioRatio("own", "Own", List.of(Reading.OVERALL_HEIGHT), List.of(Reading.WHEELBASE))));

        String fingerprint = layout.fingerprint();
        assertThat(ValueLayout.of(MeasureRegistry.builtIn()).fingerprint()).isEqualTo(fingerprint);
        assertThat(ValueLayout.of(longer).fingerprint())
                .isNotEqualTo(fingerprint)
                .isNotEqualTo(ValueLayout.of(other).fingerprint());
    }

    @Test
    void countsADimensionSetAsideAsNotRecorded() {
        double[] values = layout.classMeasuresOf(set(), Set.of("overallLength"));

        assertThat(value(values, "length-in-wheels")).isEqualTo(4600 / 700.0);
        assertThat(value(values, "wheelbase-in-wheels")).isEqualTo(4.0);
        double[] withoutTwo = layout.classMeasuresOf(set(), Set.of("overallLength", "rearOverhang"));
        assertThat(value(withoutTwo, "length-in-wheels")).isNaN();
        assertThat(ValueLayout.scalarsOf(set(), Set.of("overallLength"))[Dimension.OVERALL_LENGTH.ordinal()])
                .isNaN();
    }

    @Test
    void leavesOutWhatDependsOnAWheelbaseSetAside() {
        double[] values = layout.classMeasuresOf(set(), Set.of("wheelbase"));

        assertThat(value(values, "wheelbase-in-wheels")).isNaN();
        assertThat(value(values, "wheels-spanned")).isNaN();
        assertThat(value(values, "length-in-wheels")).isEqualTo(4600 / 700.0);
        assertThat(ValueLayout.scalarsOf(set(), Set.of("wheelbase"))[Dimension.WHEELBASE.ordinal()])
                .isNaN();
    }

    @Test
    void countsAMeasureSetAsideAsMissing() {
        double[] values = layout.classMeasuresOf(set(), Set.of("wheels-spanned"));

        assertThat(value(values, "wheels-spanned")).isNaN();
        assertThat(value(values, "wheelbase-in-wheels")).isEqualTo(4.0);
    }

    @Test
    void takesNoLengthOfASketchForMillimetres() {
        DimensionSet sketch = set().toBuilder()
                .scale(Scale.UNSCALED)
                .set(Dimension.SCREEN_ANGLE, 30)
                .build();

        double[] scalars = ValueLayout.scalarsOf(sketch, Set.of());
        assertThat(scalars[Dimension.WHEELBASE.ordinal()]).isNaN();
        assertThat(scalars[Dimension.FRONT_TYRE_DIAMETER.ordinal()]).isNaN();
        assertThat(scalars[Dimension.SCREEN_ANGLE.ordinal()]).isEqualTo(30);
        assertThat(value(layout.measuresOf(sketch), "wheelbase-in-wheels")).isEqualTo(4.0);
    }
}
