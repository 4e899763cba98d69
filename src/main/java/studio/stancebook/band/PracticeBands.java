package studio.stancebook.band;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.quantity.Interval;

/**
 * How the trade lays out a saloon, a crossover and an off-road SUV, as bands to start from: common practice, no source.
 * The words are the trade's, the figures around them ours: wide enough that a car right in the middle is judged inside
 * although the diameter of its tyre is only known by its designation, and apart enough that the textbook car of one type is
 * outside the bands of the others. A studio replaces them by what its own benchmarks say.
 */
public final class PracticeBands {

    private static final String NO_SOURCE = "Common practice, no source: ";

    private static final Map<VehicleType, List<PracticeBand>> BANDS = new EnumMap<>(VehicleType.class);

    static {
        for (VehicleType type : VehicleType.values()) {
            BANDS.put(type, new ArrayList<>());
        }
        saloon(BANDS.getOrDefault(VehicleType.SALOON, List.of()));
        crossover(BANDS.getOrDefault(VehicleType.CROSSOVER, List.of()));
        offRoad(BANDS.getOrDefault(VehicleType.OFF_ROAD, List.of()));
    }

    private PracticeBands() {}

    /** The bands of a type, in the order of the measures. */
    public static List<PracticeBand> of(VehicleType type) {
        return List.copyOf(BANDS.getOrDefault(type, List.of()));
    }

    private static void saloon(List<PracticeBand> bands) {
        add(bands, "wheelbase-in-wheels", 3.85, 4.25, "about four wheels from centre to centre");
        add(bands, "wheels-spanned", 4.85, 5.25, "about five wheels, both counted");
        add(bands, "height-in-wheels", 1.9, 2.1, "about two tyres high");
        add(bands, "rocker-offset-in-wheels", -0.27, -0.12, "the rocker runs well below the wheel centre");
        add(bands, "arch-gap-front-in-wheels", 0.015, 0.055, "little clearance over the tyre");
        add(bands, "arch-gap-rear-in-wheels", 0.015, 0.055, "little clearance over the tyre");
        add(bands, "screen-aim-in-wheels", 0.57, 0.95, "the windscreen line aims above the top of the front tyre");
        add(bands, "sidewall-share", 0.14, 0.185, "a tyre of the usual diameter on a large rim");
        add(bands, "rim-share", 0.63, 0.72, "a tyre of the usual diameter on a large rim");
        add(bands, "height-to-length", 0.27, 0.32, "a low, swept silhouette");
        add(bands, "screen-angle", 23, 32, "a low, swept windscreen");
        add(bands, "approach-angle", 10, 18, "small approach and departure angles");
        add(bands, "departure-angle", 10, 18, "small approach and departure angles");
    }

    private static void crossover(List<PracticeBand> bands) {
        add(bands, "wheelbase-in-wheels", 3.62, 3.9, "about three and three quarter wheels from centre to centre");
        add(bands, "wheels-spanned", 4.62, 4.9, "a little under five wheels, about four and three quarters");
        add(bands, "height-in-wheels", 2.1, 2.28, "slightly more than two tyres high");
        add(bands, "rocker-offset-in-wheels", -0.12, -0.04, "the rocker runs slightly below the wheel centre");
        add(bands, "arch-gap-front-in-wheels", 0.055, 0.1, "some clearance over the tyre");
        add(bands, "arch-gap-rear-in-wheels", 0.055, 0.1, "some clearance over the tyre");
        add(bands, "screen-aim-in-wheels", 0.4, 0.57, "the windscreen line aims at the top of the front tyre");
        add(bands, "sidewall-share", 0.185, 0.217, "a slightly larger tyre");
        add(bands, "rim-share", 0.566, 0.63, "a slightly larger tyre");
        add(bands, "height-to-length", 0.325, 0.38, "sleeker than an off-road SUV");
        add(bands, "screen-angle", 32, 42, "a windscreen sleeker than that of an off-road SUV");
        add(bands, "approach-angle", 18, 28, "clearly larger approach and departure angles than a saloon");
        add(bands, "departure-angle", 19, 30, "clearly larger approach and departure angles than a saloon");
    }

    private static void offRoad(List<PracticeBand> bands) {
        add(bands, "wheelbase-in-wheels", 3.35, 3.62, "about three and a half wheels from centre to centre");
        add(bands, "wheels-spanned", 4.35, 4.62, "about four and a half wheels, both counted");
        add(bands, "height-in-wheels", 2.25, 2.5, "two and a quarter to two and a half tyres high");
        add(bands, "rocker-offset-in-wheels", -0.04, 0.08, "the rocker runs at the height of the wheel centre");
        add(bands, "arch-gap-front-in-wheels", 0.1, 0.2, "generous clearance over the tyre");
        add(bands, "arch-gap-rear-in-wheels", 0.1, 0.2, "generous clearance over the tyre");
        add(bands, "screen-aim-in-wheels", -0.15, 0.2, "the windscreen line aims at the front wheel centre");
        add(bands, "front-door-gap-in-wheels", 0.02, 0.16, "the front door shut line just behind the front wheel");
        add(
                bands,
                "rear-door-lead-in-wheels",
                0.02,
                0.16,
                "the rear door shut line just ahead of the rear wheel centre");
        add(bands, "sidewall-share", 0.217, 0.28, "a large tyre with much sidewall");
        add(bands, "rim-share", 0.44, 0.566, "a large tyre on a small rim");
        add(bands, "height-to-length", 0.385, 0.45, "a boxy silhouette");
        add(bands, "screen-angle", 44, 70, "an upright windscreen");
        add(bands, "approach-angle", 30, 50, "generous approach and departure angles");
        add(bands, "departure-angle", 30, 48, "generous approach and departure angles");
    }

    private static void add(List<PracticeBand> bands, String measure, double lower, double upper, String reason) {
        bands.add(new PracticeBand(measure, new Interval(lower, upper), NO_SOURCE + reason + "."));
    }
}
