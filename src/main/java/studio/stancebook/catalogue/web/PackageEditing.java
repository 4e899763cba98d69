package studio.stancebook.catalogue.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.catalogue.UnknownPackage;
import studio.stancebook.catalogue.web.PackageLive.PackageDrawn;
import studio.stancebook.classes.UnknownSegment;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.ErrorLink;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Refusal;
import studio.stancebook.problem.Stale;

/** Recording, changing and deleting packages by hand. */
@Controller
@RequestMapping("/packages")
@RequiresPermission(Permission.RECORD_PACKAGES)
class PackageEditing {

    private final Catalogue catalogue;
    private final Segments segments;
    private final BothVersions bothVersions;
    private final MessageSource messages;

    PackageEditing(Catalogue catalogue, Segments segments, BothVersions bothVersions, MessageSource messages) {
        this.messages = messages;
        this.catalogue = catalogue;
        this.segments = segments;
        this.bothVersions = bothVersions;
    }

    @ModelAttribute("choices")
    PackageChoices choices() {
        return PackageChoices.of(
                segments.all(), messages.getMessage("web.form.choose", null, LocaleContextHolder.getLocale()));
    }

    /** @param of the id of a package that the form is filled with, as for another version of the same vehicle */
    @GetMapping("/new")
    String blank(
            @RequestParam(required = false) @Nullable String segment,
            @RequestParam(required = false) @Nullable Long of,
            Model model) {
        if (of == null) {
            PackageDrawn nothing = PackageDrawn.empty();
            return newForm(PackageForm.empty(segment), DimensionForm.blank(), FieldErrors.none(), nothing, model);
        }
        PackageView like = catalogue.get(of);
        PackageDrawn drawn = PackageDrawn.of(like.dimensions(), like.name(), "started");
        return newForm(PackageForm.of(like), DimensionForm.of(like.dimensions()), FieldErrors.none(), drawn, model);
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute PackageForm form,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        DimensionForm typed = DimensionForm.typed(all);
        try {
            PackageView added = catalogue.add(form.draft(typed), who.author());
            return done("catalogue.package.added", added, redirect);
        } catch (Impossible | Conflict | UnknownSegment refusal) {
            response.setStatus(refusal.type().status());
            return newForm(form, typed, FieldErrors.of(refusal, fieldOf(refusal)), drawnAgain(form, typed), model);
        }
    }

    /** The form again with its drawing, for a browser that draws nothing by itself. */
    @PostMapping(params = "draw")
    String draw(@ModelAttribute PackageForm form, @RequestParam Map<String, String> all, Model model) {
        DimensionForm typed = DimensionForm.typed(all);
        return newForm(form, typed, typed.faults(), drawnAgain(form, typed), model);
    }

    @PostMapping(path = "/{id}", params = "draw")
    String draw(
            @PathVariable long id,
            @ModelAttribute PackageForm form,
            @RequestParam Map<String, String> all,
            Model model) {
        DimensionForm typed = DimensionForm.typed(all);
        return editForm(id, form, typed, typed.faults(), drawnAgain(id, form, typed), model);
    }

    private static PackageDrawn drawnAgain(PackageForm form, DimensionForm typed) {
        return PackageDrawn.of(typed, DimensionForm.blank(), form.nameText());
    }

    private PackageDrawn drawnAgain(long id, PackageForm form, DimensionForm typed) {
        DimensionForm saved = DimensionForm.of(catalogue.get(id).dimensions());
        return PackageDrawn.of(typed, saved, form.nameText());
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable long id, Model model) {
        PackageView now = catalogue.get(id);
        PackageDrawn drawn = PackageDrawn.of(now.dimensions(), now.name(), "kept");
        return editForm(id, PackageForm.of(now), DimensionForm.of(now.dimensions()), FieldErrors.none(), drawn, model);
    }

    @PostMapping("/{id}")
    String change(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @ModelAttribute PackageForm form,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        DimensionForm typed = DimensionForm.typed(all);
        try {
            PackageDraft draft = form.draft(typed);
            return change(id, form, draft, who, model, response, redirect);
        } catch (Impossible | Conflict | UnknownSegment refusal) {
            response.setStatus(refusal.type().status());
            FieldErrors errors = FieldErrors.of(refusal, fieldOf(refusal));
            return editForm(id, form, typed, errors, drawnAgain(id, form, typed), model);
        } catch (UnknownPackage deletedMeanwhile) {
            response.setStatus(deletedMeanwhile.type().status());
            FieldErrors errors = FieldErrors.of(deletedMeanwhile, "name");
            return newForm(form, typed, errors, drawnAgain(form, typed), model);
        }
    }

    private String change(
            long id,
            PackageForm form,
            PackageDraft draft,
            SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            PackageView changed = catalogue.change(id, form.expected(), draft, who.author());
            return done("catalogue.package.changed", changed, redirect);
        } catch (Stale stale) {
            response.setStatus(stale.type().status());
            PackageView now = catalogue.get(id);
            model.addAttribute("now", now);
            model.addAttribute("rows", bothVersions.rows(draft, now));
            return "catalogue/package-conflict";
        }
    }

    @GetMapping("/{id}/delete")
    String askToDelete(@PathVariable long id, Model model) {
        model.addAttribute("it", catalogue.get(id));
        return "catalogue/package-delete";
    }

    @PostMapping("/{id}/delete")
    String delete(
            @PathVariable long id,
            @ModelAttribute PackageForm form,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        PackageView now = catalogue.get(id);
        try {
            catalogue.delete(id, form.expected());
        } catch (Stale stale) {
            response.setStatus(stale.type().status());
            model.addAttribute("it", now);
            model.addAttribute("stale", true);
            return "catalogue/package-delete";
        }
        redirect.addFlashAttribute("notice", "catalogue.package.deleted");
        redirect.addFlashAttribute("noticeWords", new Object[] {now.title()});
        return "redirect:/catalogue";
    }

    private static String fieldOf(Refusal refusal) {
        return refusal instanceof UnknownSegment ? "segment" : "name";
    }

    private static String done(String notice, PackageView view, RedirectAttributes redirect) {
        redirect.addFlashAttribute("notice", notice);
        redirect.addFlashAttribute("noticeWords", new Object[] {view.title()});
        return "redirect:/packages/" + view.id();
    }

    private static String newForm(
            PackageForm form, DimensionForm typed, FieldErrors errors, PackageDrawn drawn, Model model) {
        fill(form, typed, errors, drawn, model);
        return "catalogue/package-new";
    }

    private static String editForm(
            long id, PackageForm form, DimensionForm typed, FieldErrors errors, PackageDrawn drawn, Model model) {
        fill(form, typed, errors, drawn, model);
        model.addAttribute("id", id);
        return "catalogue/package-edit";
    }

    private static void fill(
            PackageForm form, DimensionForm typed, FieldErrors errors, PackageDrawn drawn, Model model) {
        model.addAttribute("live", drawn);
        model.addAttribute("form", form);
        model.addAttribute("dimensions", typed.with(errors.all()));
        model.addAttribute("errors", errors);
        model.addAttribute("links", ErrorLink.of(errors.all()));
    }
}
