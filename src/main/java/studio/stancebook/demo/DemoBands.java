package studio.stancebook.demo;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Author;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.band.PracticeBand;
import studio.stancebook.band.PracticeBands;
import studio.stancebook.band.VehicleType;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.QuantileType;

/** Sets the bands of the demo studio: rules of the trade where there are any, else by the class. */
@Component
@Profile("demo")
class DemoBands {

    private static final String CLASS = "What is usual in the class.";

    /** What the trade speaks of when it lays a car out; the rest is judged by the class. */
    private static final Set<String> BY_RULE = Set.of(
            "wheelbase-in-wheels",
            "wheels-spanned",
            "height-in-wheels",
            "rocker-offset-in-wheels",
            "screen-aim-in-wheels",
            "sidewall-share",
            "rim-share",
            "approach-angle",
            "departure-angle");

    private static final BandMethod MIDDLE = new BandMethod.Percentile(0.05, 0.95, QuantileType.TYPE_7);

    private static final Map<String, VehicleType> TYPES = Map.of(
            "saloon", VehicleType.SALOON, "crossover", VehicleType.CROSSOVER, "off-road-suv", VehicleType.OFF_ROAD);

    private static final Map<String, BandMethod> METHODS = Map.of(
            "off-road-suv",
            new BandMethod.Tolerance(0.9, 0.95),
            "saloon",
            new BandMethod.Robust(2.5),
            "crossover",
            new BandMethod.Tolerance(0.8, 0.9),
            "estate",
            new BandMethod.Tolerance(0.9, 0.95),
            "hatchback",
            new BandMethod.Robust(2.5),
            "van",
            new BandMethod.DistributionFree(0.75, 0.9),
            "pick-up",
            new BandMethod.Percentile(0.1, 0.9, QuantileType.TYPE_7));

    private final Bands bands;
    private final StudioMeasures measures;

    DemoBands(Bands bands, StudioMeasures measures) {
        this.bands = bands;
        this.measures = measures;
    }

    void set(List<String> segments, Author by) {
        for (String segment : segments) {
            Map<String, PracticeBand> rules = rules(segment);
            for (Measure measure : measures.current().all()) {
                PracticeBand rule = rules.get(measure.key());
                BandSetting setting =
                        rule == null ? BandSetting.of(METHODS.getOrDefault(segment, MIDDLE)) : rule.setting();
                if (bands.trial(segment, measure.key(), setting).possible()) {
                    bands.set(segment, measure.key(), setting, rule == null ? CLASS : rule.reason(), null, by);
                }
            }
        }
    }

    /** The ready-made bands of the trade for a segment that has some, by measure. */
    private static Map<String, PracticeBand> rules(String segment) {
        VehicleType type = TYPES.get(segment);
        return type == null
                ? Map.of()
                : PracticeBands.of(type).stream()
                        .filter(band -> BY_RULE.contains(band.measure()))
                        .collect(Collectors.toMap(PracticeBand::measure, Function.identity()));
    }
}
