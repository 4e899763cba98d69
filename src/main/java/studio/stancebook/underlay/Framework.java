package studio.stancebook.underlay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.paper.Path;
import studio.stancebook.quantity.Interval;

/**
 * What a sheet is drawn from. Lengths in mm, x = 0 at the front wheel centre and rearward, z = 0 at the ground and up.
 *
 * @param title of the sheet
 * @param subject what is drawn, in words: the segment, or the proposal with its revision
 * @param segment name of the segment whose bands are drawn
 * @param tyre its size as written; its diameter where there is none
 * @param diameter the reference tyre diameter
 * @param wheelbase from centre to centre
 * @param front wheel
 * @param rear wheel
 * @param proportions by key of the measure, in the order in which they are listed
 * @param outline the proposal's own lines, y downwards; empty for none
 * @param missing names of the measures that have neither a band nor a value, so that they are not drawn
 */
public record Framework(
        String title,
        String subject,
        String segment,
        String tyre,
        double diameter,
        double wheelbase,
        Wheel front,
        Wheel rear,
        Map<String, Proportion> proportions,
        List<Path> outline,
        List<String> missing) {

    static final String WHEELBASE = "wheelbase-in-wheels";
    static final String FRONT_OVERHANG = "front-overhang-in-wheels";
    static final String REAR_OVERHANG = "rear-overhang-in-wheels";
    static final String HEIGHT = "height-in-wheels";
    static final String CLEARANCE = "clearance-in-wheels";
    static final String ROCKER = "rocker-offset-in-wheels";
    static final String AIM = "screen-aim-in-wheels";
    static final String SCREEN_ANGLE = "screen-angle";
    static final String DASH = "dash-to-axle-in-wheels";
    static final String FRONT_DOOR = "front-door-gap-in-wheels";
    static final String REAR_DOOR = "rear-door-lead-in-wheels";
    static final String APPROACH = "approach-angle";
    static final String DEPARTURE = "departure-angle";

    /** The measures that are drawn, in the order in which they are listed. */
    public static final List<String> MEASURES = List.of(
            WHEELBASE,
            FRONT_OVERHANG,
            REAR_OVERHANG,
            HEIGHT,
            CLEARANCE,
            ROCKER,
            DASH,
            AIM,
            SCREEN_ANGLE,
            FRONT_DOOR,
            REAR_DOOR,
            APPROACH,
            DEPARTURE);

    Optional<Proportion> find(String measure) {
        return Optional.ofNullable(proportions.get(measure));
    }

    double meanCentreHeight() {
        return (front.centreHeight() + rear.centreHeight()) / 2;
    }

    /** Where a value of a measure lies on the sheet: an x or a z in mm; the value itself for an angle. */
    public double place(String measure, double value) {
        double length = value * diameter;
        return switch (measure) {
            case FRONT_OVERHANG -> -length;
            case REAR_OVERHANG -> wheelbase + length;
            case ROCKER -> meanCentreHeight() + length;
            case AIM -> front.centreHeight() + length;
            case FRONT_DOOR -> front.radius() + length;
            case REAR_DOOR -> wheelbase - length;
            case SCREEN_ANGLE, APPROACH, DEPARTURE -> value;
            default -> length;
        };
    }

    /** Where the line of a measure lies; empty where it is not drawn. */
    Optional<Double> place(String measure) {
        return find(measure).map(proportion -> place(measure, proportion.value()));
    }

    /** Where its band lies, the lesser place first; an infinite end is open. Null where there is no band. */
    @Nullable
    Interval zone(String measure) {
        Proportion proportion = proportions.get(measure);
        Interval band = proportion == null ? null : proportion.band();
        if (band == null) {
            return null;
        }
        double one = place(measure, band.lower());
        double other = place(measure, band.upper());
        return new Interval(Math.min(one, other), Math.max(one, other));
    }

    /** The foremost thing on the sheet, edges of bands included. */
    double foremost() {
        return Math.min(-front.radius(), least(FRONT_OVERHANG, 0));
    }

    double rearmost() {
        return Math.max(wheelbase + rear.radius(), greatest(REAR_OVERHANG, wheelbase));
    }

    double highest() {
        return Math.max(2 * Math.max(front.radius(), rear.radius()), greatest(HEIGHT, 0));
    }

    private double least(String measure, double otherwise) {
        Interval zone = zone(measure);
        double place = place(measure).orElse(otherwise);
        return zone == null || Double.isInfinite(zone.lower()) ? place : Math.min(place, zone.lower());
    }

    private double greatest(String measure, double otherwise) {
        Interval zone = zone(measure);
        double place = place(measure).orElse(otherwise);
        return zone == null || Double.isInfinite(zone.upper()) ? place : Math.max(place, zone.upper());
    }
}
