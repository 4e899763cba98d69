package studio.stancebook.catalogue.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.catalogue.PackageThumbnails;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Origin;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Malformed;

/** The list of benchmark packages. */
@Controller
class CataloguePage {

    private static final int PICTURES_AT_ONCE = 24;

    private final Catalogue catalogue;
    private final Segments segments;
    private final StudioMeasures measures;
    private final MessageSource messages;
    private final PackageThumbnails thumbnails;

    CataloguePage(
            Catalogue catalogue,
            Segments segments,
            StudioMeasures measures,
            MessageSource messages,
            PackageThumbnails thumbnails) {
        this.catalogue = catalogue;
        this.segments = segments;
        this.measures = measures;
        this.messages = messages;
        this.thumbnails = thumbnails;
    }

    /**
     * One line of the list.
     *
     * @param year empty where there is none
     * @param shown the value of the measure that was looked for by
     * @param picture null in the table
     */
    record ListedPackage(
            long id,
            String name,
            String segment,
            String segmentName,
            String year,
            String origin,
            String shown,
            int openQueries,
            boolean setAside,
            @Nullable CachedFragment picture) {}

    @GetMapping("/catalogue")
    String show(@ModelAttribute("form") CatalogueForm form, Pageable page, Model model, HttpServletResponse response) {
        Measure measure = form.byMeasure()
                ? measures.current().find(String.valueOf(form.measure())).orElse(null)
                : null;
        model.addAttribute("measure", measure);
        model.addAttribute("segments", segmentChoices());
        model.addAttribute("origins", originChoices());
        model.addAttribute("measures", measureChoices());
        model.addAttribute("errors", FieldErrors.none());
        try {
            Page<PackageSummary> found = catalogue.search(form.filter(), ordered(page, form));
            model.addAttribute("packages", found.map(summary -> entry(summary, measure, form.pictures())));
        } catch (Malformed malformed) {
            response.setStatus(malformed.type().status());
            model.addAttribute("errors", FieldErrors.of(malformed, "q"));
            model.addAttribute("packages", Page.empty(page));
        }
        return "catalogue/catalogue";
    }

    private static Pageable ordered(Pageable page, CatalogueForm form) {
        int size = form.pictures() ? Math.min(PICTURES_AT_ONCE, page.getPageSize()) : page.getPageSize();
        Sort sort = page.getSort().isSorted() ? page.getSort() : Sort.by("name");
        return PageRequest.of(page.getPageNumber(), size, sort);
    }

    private ListedPackage entry(PackageSummary summary, @Nullable Measure measure, boolean picture) {
        return new ListedPackage(
                summary.id(),
                summary.name(),
                summary.segment(),
                summary.segmentName(),
                summary.modelYear() == null ? "" : String.valueOf(summary.modelYear()),
                summary.origin().label(),
                measure == null ? "" : Formats.value(summary.shown(), measure),
                summary.openQueries(),
                summary.setAside(),
                picture ? thumbnails.of(summary) : null);
    }

    private Map<String, String> segmentChoices() {
        Map<String, String> choices = any();
        segments.names().forEach(segment -> choices.put(segment.key(), segment.name()));
        return choices;
    }

    private Map<String, String> originChoices() {
        Map<String, String> choices = any();
        for (Origin origin : Origin.values()) {
            choices.put(origin.key(), origin.label());
        }
        return choices;
    }

    private Map<String, String> measureChoices() {
        Map<String, String> choices = any();
        measures.current().all().forEach(measure -> choices.put(measure.key(), measure.name()));
        return choices;
    }

    private Map<String, String> any() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", messages.getMessage("catalogue.filter.any", null, LocaleContextHolder.getLocale()));
        return choices;
    }
}
