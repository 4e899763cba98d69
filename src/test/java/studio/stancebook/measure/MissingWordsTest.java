package studio.stancebook.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Reading;

/** Reasons in the trade's words: a designer never reads a JSON name. Wanted sentences: words of the pages, studio's own. */
class MissingWordsTest {

    @Test
    void namesEachMissingThingOnceByItsLabel() {
        String reason = NotMeasurable.missing(
                        List.of("cowl, or dashToAxle", "cowl, or cowlHeight", "frontTyre, or frontTyreDiameter"))
                .reason();

        assertThat(reason).isEqualTo("Needs the cowl point, and a front tyre size or diameter");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "frontAxleClearance | Needs the clearance under the front axle",
                "groundClearance, or underbody | Needs the ground clearance, or the underbody",
                "seatHeight, or hPoint | Needs the seating reference height, or the H-point",
                "beltFront and beltRear | Needs the front of the belt line and the rear of the belt line",
                "frontTyre and rearTyre, or their diameters | Needs the sizes or diameters of both tyres",
                "approachAngle, or the underbody as far as the nose"
                        + " | Needs the approach angle, or the underbody as far as the nose"
            })
    void putsNamesIntoWords(String missing, String words) {
        assertThat(NotMeasurable.needs(List.of(missing))).isEqualTo(words);
    }

    @Test
    void doesNotAskForOneTyreBesideBoth() {
        assertThat(NotMeasurable.needs(
                        List.of("frontTyre, or frontTyreDiameter", "frontTyre and rearTyre, or their diameters")))
                .isEqualTo("Needs the sizes or diameters of both tyres");
    }

    static Stream<Measure> measures() {
        return MeasureRegistry.builtIn().all().stream();
    }

    /** Names of two words are the ones that nobody takes for English. */
    @ParameterizedTest
    @MethodSource("measures")
    void saysNoJsonNameForAnyMeasure(Measure measure) {
        DimensionSet least =
                DimensionSet.builder().set(Dimension.WHEELBASE, 2700).build();

        if (measure.of(new Subject(least)) instanceof NotMeasurable none) {
            assertThat(none.reason()).doesNotContainPattern("[a-z][A-Z]").doesNotContain("the the");
            assertThat(none.missing()).isSubsetOf(measure.needs());
        } else {
            assertThat(measure.needs()).isSubsetOf(Reading.WHEELBASE.takenFrom());
        }
    }

    @Test
    void saysNoJsonNameForAnyReadingOrDimension() {
        Stream<String> all = Stream.concat(
                Arrays.stream(Reading.values()).map(Reading::takenFrom),
                Arrays.stream(Dimension.values()).map(Dimension::key));

        assertThat(all.map(one -> NotMeasurable.needs(List.of(one))))
                .allSatisfy(words -> assertThat(words).doesNotContainPattern("[a-z][A-Z]"));
    }
}
