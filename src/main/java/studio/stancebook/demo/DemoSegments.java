package studio.stancebook.demo;

import java.util.List;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;

/** Fills the catalogue of the demo studio. */
@Component
@Profile("demo")
class DemoSegments {

    private static final String INVENTED = " Every vehicle in it is invented.";

    private static final List<DemoSegment> SEGMENTS = List.of(
            new DemoSegment(
                    "off-road-suv", "Off-road SUV", "Large tyres with tall sidewalls, a rocker at the wheel centre."),
            new DemoSegment("crossover", "Crossover", "A tall car on car mechanics."),
            new DemoSegment("saloon", "Saloon", "Three boxes, low over its wheels."),
            new DemoSegment("estate", "Estate", "A saloon with its roof carried to the tail."),
            new DemoSegment("hatchback", "Hatchback", "Two boxes and a short tail."),
            new DemoSegment("sports-car", "Sports car", "Low, two doors, wider tyres behind."),
            new DemoSegment("van", "Van", "One tall box behind a short nose."),
            new DemoSegment("pick-up", "Pick-up", "A cab with an open bed behind it."));

    private final Segments segments;
    private final Catalogue catalogue;

    DemoSegments(Segments segments, Catalogue catalogue) {
        this.segments = segments;
        this.catalogue = catalogue;
    }

    private record DemoSegment(String key, String name, String description) {}

    void fill(String by) {
        SEGMENTS.forEach(segment -> segments.create(segment.key(), segment.name(), segment.description() + INVENTED));
        List<PackageDraft> drafts =
                InventedCatalogue.vehicles().stream().map(DemoSegments::draft).toList();
        catalogue.addAll(drafts, by);
    }

    private static PackageDraft draft(InventedVehicle vehicle) {
        return new PackageDraft(
                vehicle.name(),
                vehicle.segment(),
                vehicle.modelYear(),
                vehicle.dimensions().origin(),
                vehicle.dimensions());
    }
}
