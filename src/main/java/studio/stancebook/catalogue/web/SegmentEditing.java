package studio.stancebook.catalogue.web;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Stale;

/** The list of segments, and making and describing them. */
@Controller
class SegmentEditing {

    private final Segments segments;
    private final BothVersions bothVersions;

    SegmentEditing(Segments segments, BothVersions bothVersions) {
        this.segments = segments;
        this.bothVersions = bothVersions;
    }

    @GetMapping("/segments")
    String list(Model model) {
        model.addAttribute("segments", segments.all());
        return "catalogue/segments";
    }

    @GetMapping("/segments/new")
    @RequiresPermission(Permission.MANAGE_SEGMENTS)
    String blank(Model model) {
        return newForm(SegmentForm.empty(), FieldErrors.none(), model);
    }

    /** A key that is left empty is made from the name. */
    @PostMapping("/segments")
    @RequiresPermission(Permission.MANAGE_SEGMENTS)
    String create(
            @ModelAttribute SegmentForm form, Model model, HttpServletResponse response, RedirectAttributes redirect) {
        String key =
                form.keyText().isEmpty() ? CatalogueRules.keyOf(form.nameText()).orElse("") : form.keyText();
        try {
            return done(
                    "catalogue.segment.made", segments.create(key, form.nameText(), form.descriptionText()), redirect);
        } catch (Impossible | Conflict refusal) {
            response.setStatus(refusal.type().status());
            return newForm(form, FieldErrors.of(refusal, "key"), model);
        }
    }

    @GetMapping("/segments/{key}/edit")
    @RequiresPermission(Permission.MANAGE_SEGMENTS)
    String edit(@PathVariable String key, Model model) {
        return editForm(key, SegmentForm.of(segments.get(key)), FieldErrors.none(), model);
    }

    @PostMapping("/segments/{key}")
    @RequiresPermission(Permission.MANAGE_SEGMENTS)
    String change(
            @PathVariable String key,
            @ModelAttribute SegmentForm form,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            SegmentView changed = segments.change(key, form.expected(), form.nameText(), form.descriptionText());
            return done("catalogue.segment.changed", changed, redirect);
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return editForm(key, form, FieldErrors.of(refusal, "name"), model);
        } catch (Stale stale) {
            response.setStatus(stale.type().status());
            SegmentView now = segments.get(key);
            model.addAttribute("now", now);
            model.addAttribute("rows", bothVersions.rows(form, now));
            return "catalogue/segment-conflict";
        }
    }

    private static String done(String notice, SegmentView view, RedirectAttributes redirect) {
        redirect.addFlashAttribute("notice", notice);
        redirect.addFlashAttribute("noticeWords", new Object[] {view.name()});
        return "redirect:/segments/" + view.key();
    }

    private static String newForm(SegmentForm form, FieldErrors errors, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", errors);
        return "catalogue/segment-new";
    }

    private static String editForm(String key, SegmentForm form, FieldErrors errors, Model model) {
        model.addAttribute("key", key);
        model.addAttribute("form", form);
        model.addAttribute("errors", errors);
        return "catalogue/segment-edit";
    }
}
