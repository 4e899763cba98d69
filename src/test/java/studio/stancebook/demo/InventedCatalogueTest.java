package studio.stancebook.demo;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionChecks;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;
import studio.stancebook.measure.MeasureChecks;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;

class InventedCatalogueTest {

    static final List<InventedVehicle> VEHICLES = InventedCatalogue.vehicles();

    @Test
    void hasAtLeast160VehiclesIn8Classes() {
        assertTrue(VEHICLES.size() >= 160);
        assertEquals(
                Set.of("off-road-suv", "crossover", "saloon", "estate", "hatchback", "sports-car", "van", "pick-up"),
                VEHICLES.stream().map(InventedVehicle::segment).collect(Collectors.toSet()));
    }

    @Test
    void hasNoTwoAlike() {
        Set<String> names = new HashSet<>();
        Set<DimensionSet> sets = new HashSet<>();
        for (InventedVehicle vehicle : VEHICLES) {
            assertTrue(names.add(vehicle.name()), vehicle.name());
            assertTrue(sets.add(vehicle.dimensions()), vehicle.name());
        }
    }

    @Test
    void isTheSameEachTimeAndUnderEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals(VEHICLES, InventedCatalogue.vehicles());
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Pinned, so that a change of seed, order or table is seen; taken from the first run, not from elsewhere. */
    @Test
    void beginsWithTheSameVehicle() {
        InventedVehicle first = VEHICLES.get(0);

        assertEquals("Avocet Fen", first.name());
        assertEquals(2609, first.dimensions().scalar(Dimension.WHEELBASE).orElseThrow());
    }

    @ParameterizedTest
    @FieldSource("VEHICLES")
    void closesAndStaysInRange(InventedVehicle vehicle) {
        assertDoesNotThrow(() ->
                DimensionChecks.requireSound(vehicle.dimensions(), MeasureChecks.disagreements(vehicle.dimensions())));
    }

    @ParameterizedTest
    @FieldSource("VEHICLES")
    void lengthIsOverhangsAndWheelbase(InventedVehicle vehicle) {
        DimensionSet set = vehicle.dimensions();

        assertEquals(
                set.scalar(Dimension.OVERALL_LENGTH).orElseThrow(),
                set.scalar(Dimension.FRONT_OVERHANG).orElseThrow()
                        + set.scalar(Dimension.WHEELBASE).orElseThrow()
                        + set.scalar(Dimension.REAR_OVERHANG).orElseThrow());
    }

    @ParameterizedTest
    @FieldSource("VEHICLES")
    void outlineStaysWithinLengthAndHeight(InventedVehicle vehicle) {
        DimensionSet set = vehicle.dimensions();
        double front = -set.scalar(Dimension.FRONT_OVERHANG).orElseThrow();
        double rear = set.scalar(Dimension.WHEELBASE).orElseThrow()
                + set.scalar(Dimension.REAR_OVERHANG).orElseThrow();
        double height = set.scalar(Dimension.OVERALL_HEIGHT).orElseThrow();

        for (Point point : set.points(Polyline.OUTLINE)) {
            assertTrue(point.x() >= front - 1 && point.x() <= rear + 1, vehicle.name() + " " + point);
            assertTrue(point.z() <= height + 1, vehicle.name() + " " + point);
        }
    }

    /** Common practice of the trade, no source: about how classes stand on their wheels. */
    @ParameterizedTest
    @CsvSource({
        "saloon,       wheels-spanned,           4.9,  5.2",
        "crossover,    wheels-spanned,           4.65, 4.85",
        "off-road-suv, wheels-spanned,           4.4,  4.6",
        "saloon,       height-in-wheels,         1.95, 2.1",
        "crossover,    height-in-wheels,         2.1,  2.25",
        "off-road-suv, height-in-wheels,         2.25, 2.5",
        "saloon,       rocker-offset-in-wheels, -0.3, -0.15",
        "crossover,    rocker-offset-in-wheels, -0.13, -0.04",
        "off-road-suv, rocker-offset-in-wheels, -0.02, 0.02",
        "saloon,       screen-aim-in-wheels,     0.6,  0.9",
        "crossover,    screen-aim-in-wheels,     0.45, 0.55",
        "off-road-suv, screen-aim-in-wheels,    -0.1,  0.1",
        "off-road-suv, approach-angle,           33,   42",
        "crossover,    approach-angle,           16,   24",
        "saloon,       approach-angle,           10,   16",
        "off-road-suv, departure-angle,          26,   36",
        "saloon,       departure-angle,          11,   18",
        "off-road-suv, sidewall-share,           0.21, 0.26",
        "saloon,       sidewall-share,           0.13, 0.18"
    })
    void classesStandAsTheTradeSays(String segment, String measure, double least, double most) {
        double median = median(segment, measure);

        assertTrue(median >= least && median <= most, segment + " " + measure + " " + median);
    }

    private static double median(String segment, String measure) {
        double[] values = VEHICLES.stream()
                .filter(vehicle -> vehicle.segment().equals(segment))
                .map(vehicle -> MeasureRegistry.builtIn().get(measure).of(new Subject(vehicle.dimensions())))
                .mapToDouble(value -> ((Measured) value).value())
                .sorted()
                .toArray();
        return values[values.length / 2];
    }

    @Test
    void aboutHalfHaveAnOutlineAndSomeTheirGlass() {
        long outlined = VEHICLES.stream()
                .filter(vehicle ->
                        !vehicle.dimensions().points(Polyline.OUTLINE).isEmpty())
                .count();
        long glazed = VEHICLES.stream()
                .filter(vehicle ->
                        !vehicle.dimensions().points(Polyline.DAYLIGHT_OPENING).isEmpty())
                .count();

        assertTrue(outlined > 0.4 * VEHICLES.size() && outlined < 0.6 * VEHICLES.size(), "" + outlined);
        assertTrue(glazed > 20 && glazed < outlined, "" + glazed);
    }
}
