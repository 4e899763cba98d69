package studio.stancebook.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionChecks;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.reshaping.GivesWay;
import studio.stancebook.dimension.reshaping.Reshaping;
import studio.stancebook.dimension.reshaping.TypicalPackage;
import studio.stancebook.geometry.Point;
import studio.stancebook.measure.MeasureChecks;
import studio.stancebook.tyre.TyreDesignation;

/** One change with what follows it, on every invented vehicle: what closed goes on closing. */
class ReshapingTest {

    static Stream<InventedVehicle> vehicles() {
        return InventedCatalogue.vehicles().stream();
    }

    static Stream<String> segments() {
        return vehicles().map(InventedVehicle::segment).distinct();
    }

    private static void assertSound(DimensionSet set) {
        DimensionChecks.requireSound(set, MeasureChecks.disagreements(set));
    }

    private static double scalar(DimensionSet set, Dimension dimension) {
        return set.scalar(dimension).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void closesAfterEachChangeOfALength(InventedVehicle vehicle) {
        DimensionSet set = vehicle.dimensions();
        for (GivesWay way : GivesWay.values()) {
            for (Dimension dimension : List.of(
                    Dimension.WHEELBASE,
                    Dimension.FRONT_OVERHANG,
                    Dimension.REAR_OVERHANG,
                    Dimension.OVERALL_LENGTH,
                    Dimension.OVERALL_HEIGHT,
                    Dimension.GROUND_CLEARANCE)) {
                for (double by : new double[] {-60, 29, 120}) {
                    if (dimension == Dimension.GROUND_CLEARANCE && by != 29) {
                        continue;
                    }
                    DimensionSet after = Reshaping.with(set, dimension, scalar(set, dimension) + by, way);
                    assertThat(scalar(after, dimension)).isEqualTo(scalar(set, dimension) + by);
                    assertSound(after);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void closesAfterALandmarkIsMovedAndComesBackWithIt(InventedVehicle vehicle) {
        DimensionSet set = vehicle.dimensions();
        for (Landmark landmark : List.of(Landmark.COWL, Landmark.SCREEN_TOP, Landmark.ROOF_APEX, Landmark.BELT_REAR)) {
            Point at = set.landmark(landmark).orElseThrow();
            DimensionSet after = Reshaping.with(set, landmark, new Point(at.x() + 20, at.z() + 15));
            assertSound(after);
            DimensionSet back = Reshaping.with(after, landmark, at);
            assertThat(back.scalars()).isEqualTo(set.scalars());
            assertThat(back.landmarks()).isEqualTo(set.landmarks());
        }
    }

    @Test
    void lengthFollowsTheWheelbaseAndAnOverhangOnlyIfAsked() {
        DimensionSet set = vehicles().findFirst().orElseThrow().dimensions();
        double wheelbase = scalar(set, Dimension.WHEELBASE);
        double length = scalar(set, Dimension.OVERALL_LENGTH);
        double rear = scalar(set, Dimension.REAR_OVERHANG);

        DimensionSet longer = Reshaping.with(set, Dimension.WHEELBASE, wheelbase + 29, GivesWay.LENGTH);
        assertThat(scalar(longer, Dimension.OVERALL_LENGTH)).isEqualTo(length + 29);
        assertThat(scalar(longer, Dimension.REAR_OVERHANG)).isEqualTo(rear);

        DimensionSet kept = Reshaping.with(set, Dimension.WHEELBASE, wheelbase + 29, GivesWay.REAR_OVERHANG);
        assertThat(scalar(kept, Dimension.OVERALL_LENGTH)).isEqualTo(length);
        assertThat(scalar(kept, Dimension.REAR_OVERHANG)).isEqualTo(rear - 29);
    }

    @Test
    void wheelOpeningsGoWithTheirWheels() {
        DimensionSet set = vehicles().findFirst().orElseThrow().dimensions();
        double wheelbase = scalar(set, Dimension.WHEELBASE);
        DimensionSet after = Reshaping.with(set, Dimension.WHEELBASE, wheelbase + 100, GivesWay.LENGTH);
        assertThat(x(after, Landmark.ARCH_FRONT_TOP)).isEqualTo(x(set, Landmark.ARCH_FRONT_TOP));
        assertThat(x(after, Landmark.ARCH_REAR_TOP)).isEqualTo(x(set, Landmark.ARCH_REAR_TOP) + 100);
        assertThat(x(after, Landmark.ARCH_REAR_FORE)).isEqualTo(x(set, Landmark.ARCH_REAR_FORE) + 100);
    }

    private static double x(DimensionSet set, Landmark landmark) {
        return set.landmark(landmark).orElseThrow().x();
    }

    @Test
    void outlineGoesOnRunningThroughALandmarkThatMoved() {
        DimensionSet set = outlined();
        Point cowl = set.landmark(Landmark.COWL).orElseThrow();
        Point to = new Point(cowl.x() - 40, cowl.z() + 25);
        DimensionSet after = Reshaping.with(set, Landmark.COWL, to);
        assertThat(off(after, to)).isCloseTo(off(set, cowl), within(0.2));
    }

    private static DimensionSet outlined() {
        return vehicles()
                .map(InventedVehicle::dimensions)
                .filter(set -> !set.points(Polyline.OUTLINE).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static double off(DimensionSet set, Point from) {
        return set.points(Polyline.OUTLINE).stream()
                .mapToDouble(at -> Math.hypot(at.x() - from.x(), at.z() - from.z()))
                .min()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("segments")
    void typicalPackageOfEachClassClosesOnAnyTyre(String segment) {
        TypicalPackage typical = typical(segment);
        for (String tyre : List.of("185/60R15", "225/55R18", "265/70R17")) {
            DimensionSet set = typical.on(TyreDesignation.parse(tyre), 0);
            assertSound(set);
            assertThat(set.points(Polyline.OUTLINE)).isNotEmpty();
        }
        DimensionSet set = typical.on(TyreDesignation.parse("235/60R18"), 2850);
        assertThat(scalar(set, Dimension.WHEELBASE)).isEqualTo(2850);
        assertSound(set);
    }

    private static TypicalPackage typical(String segment) {
        return TypicalPackage.of(vehicles()
                        .filter(one -> one.segment().equals(segment))
                        .map(InventedVehicle::dimensions)
                        .toList())
                .orElseThrow();
    }

    @Test
    void halfWayBetweenTwoClassesLiesBetweenThem() {
        List<String> two = segments().limit(2).toList();
        TyreDesignation tyre = TyreDesignation.parse("225/55R18");
        DimensionSet from = typical(two.get(0)).on(tyre, 2800);
        DimensionSet to = typical(two.get(1)).on(tyre, 2800);
        DimensionSet between =
                typical(two.get(0)).towards(typical(two.get(1)), 0.5).on(tyre, 2800);
        assertSound(between);
        double middle = (scalar(from, Dimension.OVERALL_HEIGHT) + scalar(to, Dimension.OVERALL_HEIGHT)) / 2;
        assertThat(scalar(between, Dimension.OVERALL_HEIGHT)).isCloseTo(middle, within(1.0));
    }

    @Test
    void nothingIsTypicalOfAClassWithoutTyres() {
        assertThat(TypicalPackage.of(List.of())).isEmpty();
        DimensionSet bare =
                DimensionSet.builder().set(Dimension.WHEELBASE, 2800).build();
        assertThat(TypicalPackage.of(List.of(bare))).isEmpty();
    }

    @Test
    void changesOnlyWhatIsRecordedWhereLittleIs() {
        DimensionSet bare =
                DimensionSet.builder().set(Dimension.WHEELBASE, 2800).build();
        DimensionSet after = Reshaping.with(bare, Dimension.FRONT_OVERHANG, 850, GivesWay.LENGTH);
        assertThat(after.valueKeys()).containsExactlyInAnyOrder("wheelbase", "frontOverhang");
        assertThat(scalar(after, Dimension.WHEELBASE)).isEqualTo(2800);
    }
}
