package studio.stancebook.underlay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.quantity.Interval;

/** An invented framework. */
final class Frames {

    private Frames() {}

    /** D of 800 mm and a wheelbase of 2800 mm, so that every place is a round number of mm. */
    static Framework invented() {
        Map<String, Proportion> all = new LinkedHashMap<>();
        put(all, Framework.WHEELBASE, 3.5, 3.25, 3.75, false);
        put(all, Framework.FRONT_OVERHANG, 1, 0.9, 1.1, false);
        put(all, Framework.REAR_OVERHANG, 1.1, 1, 1.25, false);
        put(all, Framework.HEIGHT, 2.2, 2.1, 2.35, false);
        put(all, Framework.CLEARANCE, 0.3, 0.25, Double.POSITIVE_INFINITY, false);
        put(all, Framework.ROCKER, 0.05, 0, 0.1, false);
        put(all, Framework.DASH, 0.6, 0.5, 0.75, false);
        put(all, Framework.AIM, 0.2, 0.1, 0.3, false);
        put(all, Framework.SCREEN_ANGLE, 45, 40, 50, true);
        put(all, Framework.FRONT_DOOR, 0.25, 0.2, 0.3, false);
        put(all, Framework.REAR_DOOR, 0.6, 0.5, 0.75, false);
        put(all, Framework.APPROACH, 30, 28, 40, true);
        put(all, Framework.DEPARTURE, 26, 20, 35, true);
        return new Framework(
                "Tern & <Knot>",
                "Invented off-roaders",
                "Invented off-roaders",
                "265/70R17",
                800,
                2800,
                Wheel.of(0, 800, 432.0),
                Wheel.of(2800, 800, 432.0),
                all,
                List.of(),
                List.of());
    }

    private static void put(
            Map<String, Proportion> all, String measure, double value, double lower, double upper, boolean degrees) {
        all.put(
                measure,
                new Proportion(
                        measure,
                        measure,
                        degrees ? 1 : 2,
                        degrees,
                        value,
                        Proportion.Basis.MEDIAN,
                        new Interval(lower, upper),
                        3));
    }
}
