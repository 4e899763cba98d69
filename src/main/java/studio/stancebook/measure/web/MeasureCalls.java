package studio.stancebook.measure.web;

import io.swagger.v3.oas.annotations.Operation;
import java.net.URI;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureGroup;
import studio.stancebook.measure.StudioMeasures;

/** The list of measures, and the ratios that a studio adds to it. */
@RestController
@RequestMapping("/api/v1/measures")
class MeasureCalls {

    private final StudioMeasures measures;

    MeasureCalls(StudioMeasures measures) {
        this.measures = measures;
    }

    /**
     * A measure.
     *
     * @param needs what has to be recorded, one entry for each thing needed
     * @param more what a larger value means
     * @param studio true for a ratio that the studio added
     */
    record MeasureDescription(
            String key,
            String name,
            String group,
            String unit,
            int decimals,
            String definition,
            List<String> needs,
            String more,
            boolean studio) {

        static MeasureDescription of(Measure measure) {
            return new MeasureDescription(
                    measure.key(),
                    measure.name(),
                    measure.group().label(),
                    measure.unit().key(),
                    measure.decimals(),
                    measure.definition(),
                    measure.needs(),
                    measure.more(),
                    measure.group() == MeasureGroup.STUDIO);
        }
    }

    /** A ratio as it is asked for: names of lengths as {@code GET /api/v1/measures/lengths} lists them. */
    record RatioWish(
            @Nullable String key,
            @Nullable String name,
            @Nullable List<@Nullable String> numerator,
            @Nullable List<@Nullable String> denominator) {}

    @Operation(summary = "Every measure with its definition and what it needs")
    @GetMapping
    List<MeasureDescription> list() {
        return measures.current().all().stream().map(MeasureDescription::of).toList();
    }

    @Operation(summary = "A measure")
    @GetMapping("/{key}")
    MeasureDescription get(@PathVariable String key) {
        return MeasureDescription.of(measures.current().get(key));
    }

    /** The lengths that a ratio can be made of. */
    @Operation(summary = "The lengths that a ratio of the studio can be made of")
    @GetMapping("/lengths")
    List<Length> lengths() {
        return RatioReading.lengths().stream()
                .map(reading -> new Length(reading.key(), reading.label(), reading.takenFrom()))
                .toList();
    }

    /** @param takenFrom what has to be recorded for it */
    record Length(String key, String label, String takenFrom) {}

    @Operation(summary = "Add a ratio of the studio: a sum of lengths over a sum of lengths")
    @PostMapping
    @RequiresPermission(Permission.DEFINE_RATIOS)
    ResponseEntity<MeasureDescription> add(@AuthenticationPrincipal SignedIn who, @RequestBody RatioWish wish) {
        var ratio = measures.add(
                RatioReading.read(wish.key(), wish.name(), wish.numerator(), wish.denominator()), who.author());
        return ResponseEntity.created(URI.create("/api/v1/measures/" + ratio.key()))
                .body(MeasureDescription.of(measures.current().get(ratio.key())));
    }

    @Operation(summary = "Remove a ratio of the studio")
    @DeleteMapping("/{key}")
    @RequiresPermission(Permission.DEFINE_RATIOS)
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void remove(@PathVariable String key) {
        measures.remove(key);
    }
}
