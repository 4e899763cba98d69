package studio.stancebook.demo;

import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.access.Author;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
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
    private final ApplicationEventPublisher events;
    private final TransactionTemplate transaction;

    DemoSegments(
            Segments segments, Catalogue catalogue, ApplicationEventPublisher events, TransactionTemplate transaction) {
        this.segments = segments;
        this.catalogue = catalogue;
        this.events = events;
        this.transaction = transaction;
    }

    private record DemoSegment(String key, String name, String description) {}

    void fill(Author by) {
        SEGMENTS.forEach(segment -> segments.create(segment.key(), segment.name(), segment.description() + INVENTED));
        List<PackageDraft> drafts =
                InventedCatalogue.vehicles().stream().map(DemoSegments::draft).toList();
        transaction.executeWithoutResult(status -> {
            catalogue.addAll(drafts, by);
            FieldValues invented = FieldValues.of("packages", drafts.size());
            events.publishEvent(ActivityEvent.of(
                    "brought in", "packages", "demo", "Invented catalogue", FieldValues.none(), invented));
        });
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
