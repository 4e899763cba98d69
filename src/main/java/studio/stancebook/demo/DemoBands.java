package studio.stancebook.demo;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.QuantileType;

/** Sets the bands of the demo studio: rules of the trade where there are any, else by the class. */
@Component
@Profile("demo")
class DemoBands {

    private static final String TRADE = "Common practice of the trade, no source.";
    private static final String CLASS = "What is usual in the class.";

    private static final BandMethod MIDDLE = new BandMethod.Percentile(0.05, 0.95, QuantileType.TYPE_7);

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

    void set(List<String> segments, String by) {
        List<String[]> rules = TableFile.rows("rules.txt");
        for (String segment : segments) {
            for (Measure measure : measures.current().all()) {
                BandMethod rule = rule(rules, segment, measure.key());
                BandMethod method = rule == null ? METHODS.getOrDefault(segment, MIDDLE) : rule;
                BandSetting setting = BandSetting.of(method);
                if (bands.trial(segment, measure.key(), setting).possible()) {
                    bands.set(segment, measure.key(), setting, rule == null ? CLASS : TRADE, null, by);
                }
            }
        }
    }

    private static @Nullable BandMethod rule(List<String[]> rules, String segment, String measure) {
        for (String[] row : rules) {
            if (row[0].equals(segment) && row[1].equals(measure)) {
                return BandMethod.Rule.of(limit(row[2]), limit(row[3]), TRADE);
            }
        }
        return null;
    }

    private static @Nullable Double limit(String text) {
        return text.equals("-") ? null : Double.valueOf(text);
    }
}
