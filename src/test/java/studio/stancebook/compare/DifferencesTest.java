package studio.stancebook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Scale;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.statistics.SortedColumn;

/** Differences, in mm, in wheels and in spreads of the class, computed by hand. */
class DifferencesTest {

    private static final String WHEELBASE = "wheelbase-in-wheels";
    private static final String HEIGHT = "height-in-wheels";

    private static DimensionSetBuilder set(double wheelbase, double height, double tyre) {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, wheelbase)
                .set(Dimension.OVERALL_HEIGHT, height)
                .set(Dimension.FRONT_TYRE_DIAMETER, tyre)
                .set(Dimension.REAR_TYRE_DIAMETER, tyre);
    }

    private static Compared compared(long id, DimensionSet set) {
        return new Compared(Pick.ofPackage(id), "Package " + id, "s", "S", null, set);
    }

    /** Median 4, median absolute deviation 0.1, so a robust spread of 0.14826 wheels, in every measure. */
    private static final SortedColumn CLASS = SortedColumn.of(
            DoubleStream.of(3.7, 3.8, 3.9, 3.9, 4.0, 4.0, 4.1, 4.1, 4.2, 4.3).toArray());

    private static Difference find(List<Difference> all, String measure) {
        return all.stream()
                .filter(one -> one.measure().key().equals(measure))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void areTakenAgainstTheReferenceInMmWheelsAndSpreads() {
        List<Difference> all = new Differences(MeasureRegistry.builtIn(), key -> CLASS)
                .between(
                        compared(1, set(2800, 1400, 700).build()),
                        List.of(compared(2, set(2880, 1600, 640).build())));

        Difference wheelbase = find(all, WHEELBASE);
        assertThat(wheelbase.name()).isEqualTo("Package 2");
        assertThat(wheelbase.reference()).isCloseTo(4, within(1e-12));
        assertThat(wheelbase.difference()).isCloseTo(0.5, within(1e-12));
        assertThat(wheelbase.mm().getAsDouble()).isCloseTo(80, within(1e-9));
        // 0.5 / 0.14826; the class screens by the constant 0.6745, hence the tolerance.
        assertThat(wheelbase.spreads().getAsDouble()).isCloseTo(3.37245, within(1e-3));
        Difference height = find(all, HEIGHT);
        assertThat(height.difference()).isCloseTo(0.5, within(1e-12));
        assertThat(height.mm().getAsDouble()).isCloseTo(200, within(1e-9));
    }

    @Test
    void comeTheMostUnusualFirstAndThoseWithoutAClassLast() {
        List<Difference> all = new Differences(
                        MeasureRegistry.builtIn(), key -> key.equals(HEIGHT) ? CLASS : SortedColumn.empty())
                .between(
                        compared(1, set(2800, 1400, 700).build()),
                        List.of(
                                compared(2, set(2800, 1470, 700).build()),
                                compared(3, set(3500, 1190, 700).build())));

        assertThat(all.subList(0, 2))
                .extracting(one -> one.measure().key() + " of " + one.name())
                .containsExactly(HEIGHT + " of Package 3", HEIGHT + " of Package 2");
        assertThat(all.get(0).spreads().getAsDouble()).isNegative();
        assertThat(all.subList(2, all.size()))
                .isNotEmpty()
                .allMatch(one -> one.spreads().isEmpty());
    }

    @Test
    void haveNoMillimetresWhereOneIsASketchWithoutDimension() {
        List<Difference> all = new Differences(MeasureRegistry.builtIn(), key -> CLASS)
                .between(
                        compared(1, set(2800, 1400, 700).build()),
                        List.of(compared(
                                2, set(360, 190, 100).scale(Scale.UNSCALED).build())));

        assertThat(find(all, WHEELBASE).mm()).isEmpty();
        assertThat(find(all, WHEELBASE).difference()).isCloseTo(-0.4, within(1e-12));
    }
}
