package studio.stancebook.catalogue.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.ClassFilter;
import studio.stancebook.catalogue.ClassSnapshot;
import studio.stancebook.catalogue.ClassSnapshots;
import studio.stancebook.catalogue.SegmentQuery;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.catalogue.SetAsideView;
import studio.stancebook.drawing.Print;
import studio.stancebook.drawing.PrintedPages;
import studio.stancebook.drawing.Prints;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Malformed;
import studio.stancebook.statistics.QuantileType;

/** The class of a segment: every measure's distribution, what is set aside, and what is in question. */
@Controller
class SegmentPage {

    private static final int SHOWN = 20;

    /** What is kept with a class beside its table. */
    private enum Part {
        SET_ASIDE
    }

    private final Segments segments;
    private final Catalogue catalogue;
    private final ClassSnapshots snapshots;
    private final StudioMeasures measures;
    private final ValueNames names;
    private final Prints prints;
    private final PrintedPages printed;

    SegmentPage(
            Segments segments,
            Catalogue catalogue,
            ClassSnapshots snapshots,
            StudioMeasures measures,
            ValueNames names,
            Prints prints,
            PrintedPages printed) {
        this.segments = segments;
        this.catalogue = catalogue;
        this.snapshots = snapshots;
        this.measures = measures;
        this.names = names;
        this.prints = prints;
        this.printed = printed;
    }

    /**
     * What decides on the sections about the class.
     *
     * @param revision of the class
     * @param queries the first of the open ones
     * @param open how many are open
     */
    private record Shown(
            SegmentView segment,
            long revision,
            ClassFilter filter,
            QuantileType type,
            MeasureRegistry registry,
            List<SegmentQuery> queries,
            long open) {}

    @GetMapping("/segments/{key}")
    View show(
            @PathVariable String key,
            @ModelAttribute("form") ClassForm form,
            Model model,
            HttpServletResponse response) {
        SegmentView segment = segments.get(key);
        ClassSnapshot whole = snapshots.of(segment);
        model.addAttribute("segment", segment);
        model.addAttribute("origins", PackageChoices.of(List.of()).origins());
        model.addAttribute("errors", FieldErrors.none());
        Print content;
        try {
            content = content(segment, whole, form.filter(), form.quantiles());
        } catch (Malformed malformed) {
            response.setStatus(malformed.type().status());
            model.addAttribute("errors", FieldErrors.of(malformed, "fromYear"));
            content = content(segment, whole, ClassFilter.all(), QuantileType.TYPE_7);
        }
        return printed.page("catalogue/segment", content);
    }

    private Print content(SegmentView segment, ClassSnapshot whole, ClassFilter filter, QuantileType type) {
        MeasureRegistry registry = measures.current();
        Page<SegmentQuery> queries = catalogue.openQueries(segment, PageRequest.of(0, SHOWN));
        Shown shown = new Shown(
                segment, whole.revision(), filter, type, registry, queries.getContent(), queries.getTotalElements());
        return prints.of(shown, "catalogue/class", () -> {
            ClassSnapshot part = whole.part(filter);
            ClassTable table =
                    part.derived(new ClassTable.Key(registry, type), () -> ClassTable.of(part, registry.all(), type));
            List<SetAsideView> apart =
                    whole.derived(Part.SET_ASIDE, () -> catalogue.setAside(segment.key(), PageRequest.of(0, SHOWN)));
            return Map.of(
                    "packages", part.packages(),
                    "revision", part.revision(),
                    "table", table,
                    "queries", shown.queries(),
                    "open", shown.open(),
                    "apart", apart,
                    "names", names);
        });
    }
}
