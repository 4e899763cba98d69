package studio.stancebook.band.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import studio.stancebook.band.Band;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureGroup;
import studio.stancebook.measure.StudioMeasures;

/** All bands of a segment, each on its class. */
@Controller
class BandsPage {

    private final Bands bands;
    private final Segments segments;
    private final ClassSnapshots classes;
    private final StudioMeasures measures;
    private final TodaysBand todays;

    BandsPage(Bands bands, Segments segments, ClassSnapshots classes, StudioMeasures measures, TodaysBand todays) {
        this.bands = bands;
        this.segments = segments;
        this.classes = classes;
        this.measures = measures;
        this.todays = todays;
    }

    @GetMapping("/segments/{segment}/bands")
    String show(@PathVariable String segment, Model model) {
        ClassSnapshot snapshot = classes.of(segment);
        Map<String, Band> newest =
                bands.newest(segment).stream().collect(Collectors.toMap(Band::measure, Function.identity()));
        List<BandGroup> groups = new ArrayList<>();
        for (MeasureGroup group : MeasureGroup.values()) {
            List<BandRow> rows = measures.current().all().stream()
                    .filter(measure -> measure.group() == group)
                    .map(measure -> row(measure, snapshot, newest.get(measure.key())))
                    .toList();
            if (!rows.isEmpty()) {
                groups.add(new BandGroup(group.label(), rows));
            }
        }
        model.addAttribute("starts", BandStart.KEYS);
        model.addAttribute("segment", segments.named(segment));
        model.addAttribute("packages", snapshot.packages());
        model.addAttribute(
                "inForce", newest.values().stream().filter(Band::inForce).count());
        model.addAttribute("groups", groups);
        return "band/bands";
    }

    private BandRow row(Measure measure, ClassSnapshot snapshot, @Nullable Band band) {
        int values = snapshot.column(measure.key()).n();
        boolean shown = values > 0 || (band != null && band.inForce());
        BandStrip strip = shown
                ? ClassStrips.plain("strip-" + measure.key(), measure, snapshot, band == null ? null : band.range())
                : null;
        return new BandRow(
                measure.key(),
                measure.name(),
                strip,
                values,
                band == null ? null : BandText.of(band, measure),
                todays.where(band, snapshot, measure));
    }
}
