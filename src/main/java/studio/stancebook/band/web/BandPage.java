package studio.stancebook.band.web;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
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
import studio.stancebook.band.Band;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.BandTrial;
import studio.stancebook.band.Bands;
import studio.stancebook.band.internal.WrittenSetting;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Malformed;
import studio.stancebook.problem.PreconditionRequired;
import studio.stancebook.problem.Refusal;
import studio.stancebook.problem.Stale;

/** The band of one measure: what it is, what it would be, every version there was, and the form that sets it. */
@Controller
@RequestMapping("/segments/{segment}/bands/{measure}")
class BandPage {

    private static final String PAGE = "redirect:/segments/{segment}/bands/{measure}";

    private final Bands bands;
    private final BandPageModel pages;

    BandPage(Bands bands, BandPageModel pages) {
        this.bands = bands;
        this.pages = pages;
    }

    @GetMapping
    String show(
            @PathVariable String segment,
            @PathVariable String measure,
            @RequestParam(required = false) @Nullable String method,
            Model model) {
        Band band = bands.find(segment, measure).orElse(null);
        String chosen = method != null
                ? method
                : band == null ? "" : WrittenSetting.of(band).methodKey();
        BandForm form = BandForm.of(BandForm.METHODS.contains(chosen) ? chosen : BandForm.METHODS.get(0), band);
        return pages.show(segment, measure, form, FieldErrors.none(), model);
    }

    /** Tries a band out, or sets it, as the button says. */
    @PostMapping
    @RequiresPermission(Permission.SET_BANDS)
    String set(
            @PathVariable String segment,
            @PathVariable String measure,
            @ModelAttribute BandForm form,
            @RequestParam(defaultValue = "try") String step,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            WrittenSetting written = form.written();
            BandSetting setting = written.setting();
            if (step.equals("set")) {
                Band band = bands.set(segment, measure, setting, written.reasonText(), form.expected(), who.author());
                return done("band.done.set", band, redirect);
            }
            BandTrial trial = bands.trial(segment, measure, setting);
            return pages.trial(segment, measure, form, trial, model);
        } catch (Impossible | Malformed | Stale | PreconditionRequired refusal) {
            return refused(segment, measure, form, refusal, model, response);
        }
    }

    private String refused(
            String segment, String measure, BandForm form, Refusal refusal, Model model, HttpServletResponse response) {
        response.setStatus(refusal.type().status());
        if (refusal instanceof Stale || refusal instanceof PreconditionRequired) {
            Band now = bands.get(segment, measure);
            model.addAttribute("overtaken", true);
            return pages.show(segment, measure, form.atVersion(now.version()), FieldErrors.none(), model);
        }
        return pages.show(segment, measure, form, FieldErrors.of(refusal, "method"), model);
    }

    /** Sets the same again on the class as it is now. */
    @PostMapping("/again")
    @RequiresPermission(Permission.SET_BANDS)
    String setAgain(
            @PathVariable String segment,
            @PathVariable String measure,
            @RequestParam(defaultValue = "0") int version,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Band before = bands.get(segment, measure);
        BandSetting setting = before.setting();
        if (setting == null) {
            throw new Conflict("The band is withdrawn, so there is nothing to set again: choose a method.");
        }
        try {
            Band band =
                    bands.set(segment, measure, setting, before.reason(), new ExpectedVersion(version), who.author());
            return done("band.done.again", band, redirect);
        } catch (Impossible | Stale refusal) {
            BandForm form = BandForm.of(WrittenSetting.of(before).methodKey(), before);
            return refused(segment, measure, form, refusal, model, response);
        }
    }

    /** Withdraws the band. */
    @PostMapping("/withdraw")
    @RequiresPermission(Permission.SET_BANDS)
    String withdraw(
            @PathVariable String segment,
            @PathVariable String measure,
            @RequestParam(defaultValue = "0") int version,
            @RequestParam(defaultValue = "") String withdrawal,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            Band band = bands.withdraw(segment, measure, withdrawal, new ExpectedVersion(version), who.author());
            return done("band.done.withdrawn", band, redirect);
        } catch (Impossible | Stale refusal) {
            Band now = bands.get(segment, measure);
            BandForm form = BandForm.of(BandForm.METHODS.get(0), now);
            if (refusal instanceof Impossible) {
                response.setStatus(refusal.type().status());
                FieldErrors errors = FieldErrors.of(Impossible.ofField("withdrawal", refusal.detail()), "withdrawal");
                return pages.show(segment, measure, form, errors, model);
            }
            return refused(segment, measure, form, refusal, model, response);
        }
    }

    private static String done(String notice, Band band, RedirectAttributes redirect) {
        redirect.addFlashAttribute("notice", notice);
        redirect.addFlashAttribute("noticeWords", new Object[] {band.version()});
        return PAGE;
    }
}
