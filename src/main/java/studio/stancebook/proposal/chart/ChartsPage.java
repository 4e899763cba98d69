package studio.stancebook.proposal.chart;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.Band;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.classes.UnknownSegment;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.proposal.Proposals;

/** The class of a segment as charts: two measures against each other, and one measure in every segment. */
@Controller
class ChartsPage {

    private static final int MOST_PROPOSALS = 30;
    private static final String FIRST_X = "wheelbase-in-wheels";
    private static final String FIRST_Y = "height-in-wheels";

    private final Segments segments;
    private final ClassSnapshots classes;
    private final Bands bands;
    private final Proposals proposals;
    private final StudioMeasures measures;

    ChartsPage(Segments segments, ClassSnapshots classes, Bands bands, Proposals proposals, StudioMeasures measures) {
        this.segments = segments;
        this.classes = classes;
        this.bands = bands;
        this.proposals = proposals;
        this.measures = measures;
    }

    /**
     * @param x key of the measure to the right
     * @param y key of the measure upwards
     * @param of key of the measure that is shown for every segment
     */
    @GetMapping("/segments/{key}/charts")
    String show(
            @PathVariable String key,
            @RequestParam(required = false) @Nullable String x,
            @RequestParam(required = false) @Nullable String y,
            @RequestParam(required = false) @Nullable String of,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response) {
        MeasureRegistry known = measures.current();
        List<FieldError> errors = new ArrayList<>();
        Measure measureX = chosen("x", x, FIRST_X, known, errors);
        Measure measureY = chosen("y", y, FIRST_Y, known, errors);
        Measure each = chosen("of", of, measureX.key(), known, errors);
        if (!errors.isEmpty()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        List<SegmentName> names = segments.names();
        SegmentName segment = names.stream()
                .filter(name -> name.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new UnknownSegment(key));
        Map<String, ClassSnapshot> all = classes.all();
        model.addAttribute("segment", segment);
        model.addAttribute("errors", new FieldErrors(errors));
        model.addAttribute("x", measureX);
        model.addAttribute("y", measureY);
        model.addAttribute("each", each);
        model.addAttribute("measures", choices(known));
        model.addAttribute("scatter", scatter(segment, names, all, measureX, measureY, who));
        addMultiples(segment, names, all, each, model);
        return "proposal/charts";
    }

    private static Measure chosen(
            String field, @Nullable String key, String otherwise, MeasureRegistry known, List<FieldError> errors) {
        if (key != null && !key.isBlank() && known.find(key.strip()).isEmpty()) {
            errors.add(new FieldError(field, "There is no such measure: choose one of the list."));
        }
        return known.find(key == null ? otherwise : key.strip())
                .or(() -> known.find(otherwise))
                .orElseGet(() -> known.all().get(0));
    }

    private static Map<String, String> choices(MeasureRegistry known) {
        Map<String, String> choices = new LinkedHashMap<>();
        known.all().forEach(measure -> choices.put(measure.key(), measure.name()));
        return choices;
    }

    private Scatter scatter(
            SegmentName segment,
            List<SegmentName> names,
            Map<String, ClassSnapshot> all,
            Measure x,
            Measure y,
            SignedIn who) {
        List<SegmentEllipse> ellipses = names.stream()
                .filter(name -> all.containsKey(name.key()))
                .map(name -> SegmentEllipse.of(
                        name, name.equals(segment), snapshot(all, name).pairs(x.key(), y.key())))
                .toList();
        List<ProposalMark> marks = proposals.judgedIn(segment, MOST_PROPOSALS, who).stream()
                .flatMap(proposal -> ProposalMark.of(proposal, x.key(), y.key()).stream())
                .toList();
        return Scatter.of(x, y, snapshot(all, segment).pairs(x.key(), y.key()), ellipses, marks);
    }

    private static ClassSnapshot snapshot(Map<String, ClassSnapshot> all, SegmentName segment) {
        ClassSnapshot found = all.get(segment.key());
        if (found == null) {
            throw new UnknownSegment(segment.key());
        }
        return found;
    }

    private void addMultiples(
            SegmentName segment, List<SegmentName> names, Map<String, ClassSnapshot> all, Measure each, Model model) {
        List<SegmentName> there =
                names.stream().filter(name -> all.containsKey(name.key())).toList();
        Axis axis = Multiple.axis(
                there.stream()
                        .map(name -> snapshot(all, name).column(each.key()))
                        .toList(),
                each);
        Map<String, Band> across = bands.across(there, each.key());
        model.addAttribute("axis", axis);
        model.addAttribute(
                "multiples",
                there.stream()
                        .map(name -> Multiple.of(
                                name,
                                name.equals(segment),
                                snapshot(all, name).column(each.key()),
                                across.get(name.key()),
                                axis))
                        .toList());
    }
}
