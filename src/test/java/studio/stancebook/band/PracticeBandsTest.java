package studio.stancebook.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.measure.MeasureRegistry;

/** The textbook car of each type against the bands of all types: common practice, no source. */
class PracticeBandsTest {

    private static Map<String, AppliedBand> bands(VehicleType type) {
        Map<String, AppliedBand> bands = new HashMap<>();
        PracticeBands.of(type).forEach(band -> bands.put(band.measure(), new AppliedBand(1, band.limits())));
        return bands;
    }

    private static List<Finding> judged(DimensionSet car, VehicleType by) {
        List<Finding> judged = new ArrayList<>(
                new Assessor(MeasureRegistry.builtIn()).assess(car, bands(by)).findings());
        judged.removeIf(finding -> finding.band() == null);
        return judged;
    }

    @ParameterizedTest
    @EnumSource
    void takeTheTextbookCarOfTheirOwnTypeIn(VehicleType type) {
        List<Finding> judged = judged(TextbookCars.of(type), type);

        assertEquals(PracticeBands.of(type).size(), judged.size());
        judged.forEach(finding -> assertEquals(Verdict.VerdictKind.INSIDE, finding.kind(), finding::toString));
        assertEquals(List.of(), RangeChecks.problemsOf(TextbookCars.of(type)));
    }

    static Stream<Arguments> pairsOfTypes() {
        return Stream.of(VehicleType.values())
                .flatMap(car ->
                        Stream.of(VehicleType.values()).filter(by -> by != car).map(by -> Arguments.of(car, by)));
    }

    @ParameterizedTest
    @MethodSource("pairsOfTypes")
    void keepTheTextbookCarOfAnotherTypeOutWhereTheTypesDiffer(VehicleType car, VehicleType by) {
        Set<String> both = bands(car).keySet().stream()
                .filter(bands(by).keySet()::contains)
                .collect(Collectors.toSet());
        List<Finding> judged = judged(TextbookCars.of(car), by).stream()
                .filter(finding -> both.contains(finding.measure()))
                .toList();

        assertFalse(judged.isEmpty());
        judged.forEach(finding -> assertTrue(finding.kind().outside(), finding::toString));
    }

    /** Decision 0085: how well a diameter is known that comes from a designation. */
    @ParameterizedTest
    @EnumSource
    void areWideEnoughForATyreThatIsKnownByItsDesignation(VehicleType type) {
        DimensionSet car = TextbookCars.of(type);
        double uncertainty = DimensionSet.DESIGNATION_UNCERTAINTY_SHARE
                * car.tyreDiameter(Axle.FRONT).orElseThrow();
        DimensionSet byDesignation =
                car.toBuilder().uncertainty("frontTyreDiameter", uncertainty).build();

        judged(byDesignation, type).stream()
                .filter(finding -> Set.of(
                                "wheels-spanned",
                                "wheelbase-in-wheels",
                                "height-in-wheels",
                                "rocker-offset-in-wheels",
                                "sidewall-share",
                                "approach-angle",
                                "departure-angle")
                        .contains(finding.measure()))
                .forEach(finding -> assertEquals(Verdict.VerdictKind.INSIDE, finding.kind(), finding::toString));
    }

    @Test
    void nameMeasuresThatThereAreAndSayThatTheyHaveNoSource() {
        for (VehicleType type : VehicleType.values()) {
            PracticeBands.of(type).forEach(band -> {
                assertTrue(MeasureRegistry.builtIn().find(band.measure()).isPresent(), band.measure());
                assertTrue(band.reason().startsWith("Common practice, no source: "), band.reason());
            });
        }
    }
}
