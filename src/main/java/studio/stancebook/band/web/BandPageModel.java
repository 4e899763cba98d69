package studio.stancebook.band.web;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandTrial;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.Origin;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.FieldErrors;

/** Fills the page of one band. */
@Component
class BandPageModel {

    private final Bands bands;
    private final Segments segments;
    private final ClassSnapshots classes;
    private final StudioMeasures measures;
    private final TodaysBand todays;

    BandPageModel(Bands bands, Segments segments, ClassSnapshots classes, StudioMeasures measures, TodaysBand todays) {
        this.bands = bands;
        this.segments = segments;
        this.classes = classes;
        this.measures = measures;
        this.todays = todays;
    }

    /** The page as it is, with a form. */
    String show(String segment, String measureKey, BandForm form, FieldErrors errors, Model model) {
        Measure measure = measures.current().get(measureKey);
        ClassSnapshot snapshot = classes.of(segment);
        List<Band> versions = bands.history(segment, measureKey);
        Band newest = versions.isEmpty() ? null : versions.get(0);
        model.addAttribute("segment", segments.named(segment));
        model.addAttribute("measure", measure);
        model.addAttribute("values", snapshot.column(measureKey).n());
        model.addAttribute(
                "strip", ClassStrips.named("strip-now", measure, snapshot, newest == null ? null : newest.range()));
        model.addAttribute("now", newest == null ? null : BandText.of(newest, measure));
        model.addAttribute("today", todays.where(newest, snapshot, measure));
        model.addAttribute(
                "versions",
                versions.stream().map(band -> BandText.of(band, measure)).toList());
        model.addAttribute("methods", BandForm.METHODS);
        model.addAttribute("origins", origins());
        model.addAttribute("form", form.known());
        model.addAttribute("errors", errors);
        return "band/band";
    }

    /** The page with what the band of the form would be. */
    String trial(String segment, String measureKey, BandForm form, BandTrial trial, Model model) {
        Measure measure = measures.current().get(measureKey);
        model.addAttribute("trial", TrialText.of(trial, measure));
        model.addAttribute("trialStrip", ClassStrips.plain("strip-trial", measure, classes.of(segment), trial.range()));
        return show(segment, measureKey, form, FieldErrors.none(), model);
    }

    private static Map<String, String> origins() {
        Map<String, String> origins = new LinkedHashMap<>();
        Arrays.stream(Origin.values()).forEach(origin -> origins.put(origin.key(), origin.label()));
        return origins;
    }
}
