package studio.stancebook.demo;

import java.util.List;
import java.util.Map;
import studio.stancebook.tyre.TyreDesignation;

/**
 * The tyres of a vehicle.
 *
 * @param front size of the front axle
 * @param rear size of the rear axle
 */
record Fitment(TyreDesignation front, TyreDesignation rear) {

    private static final Map<String, List<String>> SIZES = Map.of(
            "off-road-suv",
            List.of("265/65R17", "275/60R18", "265/70R17", "255/70R18", "285/65R18", "285/70R17", "33x11.50R17LT"),
            "crossover",
            List.of("215/65R17", "225/65R17", "235/60R18", "245/55R19", "235/55R20"),
            "saloon",
            List.of("225/45R18", "235/45R18", "245/45R18", "225/50R18", "235/45R19", "245/45R19"),
            "estate",
            List.of("225/45R18", "235/45R18", "245/45R18", "225/50R18", "235/45R19", "245/45R19"),
            "hatchback",
            List.of("205/45R17", "205/60R15", "205/55R16", "225/40R18", "215/50R17"),
            "sports-car",
            List.of(
                    "225/40R18 245/40R18",
                    "235/35R19 265/35R19",
                    "245/35R19 295/30R19",
                    "245/35R20 305/30R20",
                    "255/35R20 295/35R20"),
            "van",
            List.of("205/65R16", "215/65R16", "215/60R17", "235/65R16", "225/65R17"),
            "pick-up",
            List.of("255/65R17", "265/65R17", "275/60R18", "265/70R17", "255/70R18", "285/70R17"));

    /** Sizes that a class wears, from small to large. */
    static List<Fitment> of(String segment) {
        return SIZES.getOrDefault(segment, List.of()).stream()
                .map(Fitment::parse)
                .toList();
    }

    private static Fitment parse(String text) {
        String[] sizes = text.split(" ", -1);
        return new Fitment(TyreDesignation.parse(sizes[0]), TyreDesignation.parse(sizes[sizes.length - 1]));
    }

    /** The mean of the two overall diameters, mm. */
    double diameter() {
        return (front.overallDiameterMm() + rear.overallDiameterMm()) / 2;
    }
}
