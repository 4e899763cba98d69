package studio.stancebook.catalogue.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import studio.stancebook.account.Directory;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.SegmentIssue;
import studio.stancebook.catalogue.SegmentPicture;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.catalogue.SetAsideView;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Malformed;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.statistics.QuantileType;

/** The class of a segment: every measure's distribution, what is set aside, and what is in question. */
@Controller
class SegmentPage {

    private static final int SHOWN = 20;

    /** What is kept with a class beside its table. */
    private enum CachedPart {
        SET_ASIDE
    }

    private final Segments segments;
    private final Catalogue catalogue;
    private final ClassSnapshots snapshots;
    private final StudioMeasures measures;
    private final SegmentPicture picture;
    private final ValueNames names;
    private final Directory directory;

    SegmentPage(
            Segments segments,
            Catalogue catalogue,
            ClassSnapshots snapshots,
            StudioMeasures measures,
            SegmentPicture picture,
            ValueNames names,
            Directory directory) {
        this.segments = segments;
        this.catalogue = catalogue;
        this.snapshots = snapshots;
        this.measures = measures;
        this.picture = picture;
        this.names = names;
        this.directory = directory;
    }

    @GetMapping("/segments/{key}")
    String show(
            @PathVariable String key,
            @ModelAttribute("form") ClassForm form,
            Model model,
            HttpServletResponse response) {
        SegmentView segment = segments.get(key);
        ClassSnapshot whole = snapshots.of(segment.id(), segment.key(), segment.revision());
        model.addAttribute("segment", segment);
        model.addAttribute("drawn", picture.of(segment));
        model.addAttribute("origins", PackageChoices.sources());
        model.addAttribute("errors", FieldErrors.none());
        try {
            addClass(model, whole.part(form.filter()), form.quantiles());
        } catch (Malformed malformed) {
            response.setStatus(malformed.type().status());
            model.addAttribute("errors", FieldErrors.of(malformed, "fromYear"));
            addClass(model, whole, QuantileType.TYPE_7);
        }
        Page<SegmentIssue> queries = catalogue.openQueries(segment, PageRequest.of(0, SHOWN));
        List<SetAsideView> apart =
                whole.derived(CachedPart.SET_ASIDE, () -> catalogue.setAside(segment.key(), PageRequest.of(0, SHOWN)));
        model.addAttribute("queries", queries.getContent());
        model.addAttribute("open", queries.getTotalElements());
        model.addAttribute("apart", apart);
        model.addAttribute(
                "people", directory.names(apart.stream().map(one -> one.by().personId())));
        model.addAttribute("names", names);
        return "catalogue/segment";
    }

    private void addClass(Model model, ClassSnapshot part, QuantileType type) {
        MeasureRegistry registry = measures.current();
        model.addAttribute("packages", part.packages());
        model.addAttribute("revision", part.revision());
        model.addAttribute(
                "table",
                part.derived(
                        new ClassTable.TableState(registry, type, ShownUnits.current()),
                        () -> ClassTable.of(part, registry.all(), type)));
    }
}
