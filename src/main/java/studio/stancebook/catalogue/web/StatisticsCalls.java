package studio.stancebook.catalogue.web;

import io.swagger.v3.oas.annotations.Operation;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.statistics.QuantileType;
import studio.stancebook.statistics.Summary;

/** The statistics of classes. */
@RestController
class StatisticsCalls {

    private final ClassSnapshots snapshots;
    private final StudioMeasures measures;

    StatisticsCalls(ClassSnapshots snapshots, StudioMeasures measures) {
        this.snapshots = snapshots;
        this.measures = measures;
    }

    /** @param packages how many packages count */
    record StatisticsAnswer(
            String segment, long revision, int packages, int quantileType, List<MeasureStatistics> measures) {}

    /** Every figure in the measure's unit; null where there are too few values for it. */
    record MeasureStatistics(
            String measure,
            String name,
            String unit,
            int n,
            @Nullable Double mean,
            @Nullable Double sd,
            @Nullable Double min,
            @Nullable Double p5,
            @Nullable Double p10,
            @Nullable Double p25,
            @Nullable Double median,
            @Nullable Double p75,
            @Nullable Double p90,
            @Nullable Double p95,
            @Nullable Double max,
            @Nullable Double iqr,
            @Nullable Double mad) {

        static MeasureStatistics of(Measure measure, Summary summary) {
            return new MeasureStatistics(
                    measure.key(),
                    measure.name(),
                    measure.unit().key(),
                    summary.n(),
                    orNull(summary.mean()),
                    orNull(summary.standardDeviation()),
                    orNull(summary.min()),
                    orNull(summary.p5()),
                    orNull(summary.p10()),
                    orNull(summary.p25()),
                    orNull(summary.median()),
                    orNull(summary.p75()),
                    orNull(summary.p90()),
                    orNull(summary.p95()),
                    orNull(summary.max()),
                    orNull(summary.interquartileRange()),
                    orNull(summary.medianAbsoluteDeviation()));
        }

        private static @Nullable Double orNull(OptionalDouble value) {
            return value.isPresent() ? value.getAsDouble() : null;
        }
    }

    @Operation(summary = "Location and spread of every measure over the class of a segment")
    @GetMapping("/api/v1/segments/{key}/statistics")
    StatisticsAnswer statistics(
            @PathVariable String key,
            @RequestParam(defaultValue = "7") String quantileType,
            @RequestParam(required = false) @Nullable Integer fromYear,
            @RequestParam(required = false) @Nullable Integer toYear,
            @RequestParam(required = false) @Nullable List<String> origin) {
        QuantileType type = Parameters.quantileType(quantileType);
        ClassSnapshot snapshot = snapshots.of(key, Parameters.classFilter(fromYear, toYear, origin));
        return new StatisticsAnswer(
                snapshot.segment(),
                snapshot.revision(),
                snapshot.packages(),
                type.number(),
                measures.current().all().stream()
                        .map(measure -> MeasureStatistics.of(measure, Summary.of(snapshot.column(measure.key()), type)))
                        .toList());
    }
}
